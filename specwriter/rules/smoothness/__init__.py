"""Rules on ride quality: index, instrument, sensor, surface, time of the test."""
