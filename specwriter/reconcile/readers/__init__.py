"""Readers of what stands in the job under another name than that of its variable.

One file a topic with a function ``read(job, area)`` that yields requirements, and ``waits(job,
area)`` that yields the reasons why something stated could not be read.
"""
