"""What the trip asks beside what the client has shown, and the notes that a practitioner signs (decision 0010)."""
