"""The documents judged by programs that did not write them."""
