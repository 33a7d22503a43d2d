"""Step one: whether someone may begin. Screening answers, what they ask for, and the clearances that were given.

It supports licensed judgment and does not take its place: whoever has a symptom now needs care now, not a form.
"""
