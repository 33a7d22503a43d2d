"""Each value that has felled servers, once in each place of a request that is otherwise in order: nothing by chance."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import chain
from urllib.parse import parse_qsl

from tests.made_up.asking import Ask, Made, url_of
from tests.made_up.ready import KINDS, batch
from tests.made_up.spoiling import VALUES, as_text, each_spoiled, encoded

_ENTRY = ("events", 0, "body")


def sweep(ask: Ask) -> Iterator[Made]:
    """Answer the requests for one operation."""
    yield from _paths(ask)
    yield from _queries(ask)
    if ask.operation.body and ask.name != "readRoute":
        yield from _bodies(ask)


def _paths(ask: Ask) -> Iterator[Made]:
    for one in ask.operation.path_parameters:
        for value in VALUES:
            yield ask.in_order({one.name: as_text(value)})


def _queries(ask: Ask) -> Iterator[Made]:
    plain = ask.in_order()
    address, _, query = plain.url.partition("?")
    for one in ask.operation.query:
        others = [pair for pair in parse_qsl(query) if pair[0] != one.name]
        for value in VALUES:
            yield replace(plain, url=url_of(address, [*others, (one.name, as_text(value))]))


def _bodies(ask: Ask) -> Iterator[Made]:
    plain, of_kinds = ask.in_order(), [batch([kind]) for kind in KINDS] if ask.name == "sync" else []
    every = [each_spoiled(body) for body in ask.ready] + [each_spoiled(one, _ENTRY) for one in of_kinds]
    for made in chain.from_iterable(every):
        yield replace(plain, content=encoded(made))
