"""Rules on the words of a job: no measure, no criterion, no number, no end, no negation."""
