"""Step four: what the client logs. Events come in, are kept for ever, and are folded into what pages show."""
