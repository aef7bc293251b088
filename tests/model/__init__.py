"""Tests of specwriter.model."""
