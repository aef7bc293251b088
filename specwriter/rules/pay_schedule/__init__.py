"""Rules on the pay schedule for ride: its rows, its ends, its steps, and what it pays for."""
