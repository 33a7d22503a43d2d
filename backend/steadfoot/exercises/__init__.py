"""The library: the movements of the trade, each with its ladder of easier and harder variants.

Step of the trade: choosing what a person trains, and teaching it. The texts are data files, one a movement,
under ``library``; they are read once, checked strictly, and never changed while the program runs. What a
client was shown stays in the program version that was sent to the phone, so that a better text tomorrow does
not rewrite the record.
"""
