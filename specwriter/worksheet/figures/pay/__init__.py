"""Pay: what the schedule for ride gives at its corners, and its largest step."""
