"""Drills: what is done when a machine fails, done beforehand. ``sh deploy/drill.sh`` runs and prints."""
