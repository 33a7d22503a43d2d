"""A model of the promise (decision 0017): real phones, a real server, every fault, and a checker at the end."""
