"""Rules on measurement and payment: units, quantities, prices and what they pay for."""
