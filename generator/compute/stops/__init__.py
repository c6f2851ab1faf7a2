"""Each kind of stop with numbers of its own: worked out, and listed for the ledger."""
