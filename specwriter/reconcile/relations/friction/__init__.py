"""Friction numbers of one surface: by tyre and by speed."""
