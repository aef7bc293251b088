"""Tests of specwriter.source."""
