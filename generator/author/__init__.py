"""What only one command needs: new lessons, translations, foods, filming, the schema and its page."""
