"""People and a trip for the tests of readiness: a man of 47, six weeks before two days with a pack."""

from datetime import date, timedelta

from steadfoot.rules.norms import Person, Sex
from steadfoot.rules.pain import Thresholds
from steadfoot.rules.readiness import readiness
from steadfoot.rules.readiness_facts import Known, Taken, Trip, TripDay, Walk

TODAY = date(2027, 5, 1)
MAN = Person(47, Sex.MALE, 180, 80)
LEG = TripDay(16, 900, 800, 9)
TRIP = Trip(TODAY + timedelta(weeks=6), (LEG, TripDay(10, 300, 400, 9)))


def walk(days_ago=3, km=10, up=400, down=400, pack=5, effort=None, key="w"):
    return Walk(f"{key}{days_ago}", TODAY - timedelta(days=days_ago), km, up, down, pack, effort)


def known(*walks, **more):
    return Known(
        **{"today": TODAY, "heard_on": TODAY, "person": MAN, "thresholds": Thresholds(), "walks": walks} | more
    )


def items(of, trip=TRIP):
    return {one.subject: one for one in readiness(trip, of).items}


def item(subject, of, trip=TRIP):
    return items(of, trip)[subject]


def taken(code, value, side=None, days_ago=10, person=MAN):
    return Taken(f"{code}.{side}", code, TODAY - timedelta(days=days_ago), side, value, person)
