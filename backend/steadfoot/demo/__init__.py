"""An invented practice with invented people, made through the same services that real ones use.

Everything here is for showing and trying: no name, number or course of pain is anybody's.
"""
