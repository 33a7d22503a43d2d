"""Programs: what a client is assigned, session by session, up to the trip.

Step of the trade: prescribing. A practitioner writes sessions and dates in a draft, is told what does not fit
(kit, dates, doses, spacing), and publishes. A published version is never changed: the next one replaces it,
and says in plain sentences what is different. Nothing here decides by itself; even easing off hands back
content for a person to look at. The shape of the content is decision 0002.
"""
