"""How the installation itself is doing: database, disk, backups, address, what waits. For its owner and for scrapers.

It is no step of the trade: it reads the steps and changes nothing of them.
"""
