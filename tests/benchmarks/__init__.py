"""Speed, always as a ratio of two things done in one run."""
