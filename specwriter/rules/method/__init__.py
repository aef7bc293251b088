"""Rules on test methods of any property: documents, what they measure, and the statistic."""
