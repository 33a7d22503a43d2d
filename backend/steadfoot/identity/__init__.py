"""Step one: who is who. Practice, practitioner, client, and the phone that speaks for a client."""
