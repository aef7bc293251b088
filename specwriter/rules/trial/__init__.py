"""Rules on the trial section: its length, its time, what it shows, and who pays for it."""
