"""A thousand waiting check-ins sent by the phone, beside a general-purpose replication peer in the same browser."""
