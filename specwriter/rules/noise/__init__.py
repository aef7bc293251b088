"""Rules on noise: scale, method, speed, place and length of the test, level that is possible."""
