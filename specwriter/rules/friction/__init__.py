"""Rules on friction: scale, method, tyre, speed, edition, highway against runway instruments."""
