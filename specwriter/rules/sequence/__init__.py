"""Rules on the order of the work and on its times: cure, windows, responses, submittals."""
