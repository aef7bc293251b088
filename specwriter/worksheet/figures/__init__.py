"""The figures, one file for each or for a small family; found by walking this folder."""
