"""Controls: small parts that many screens are built of."""
