"""The contact sheet: every variant as still, moving picture and strip on one page, with its findings."""

from base64 import b64encode
from collections.abc import Iterable
from dataclasses import dataclass
from gzip import compress
from html import escape


@dataclass(frozen=True, slots=True)
class Entry:
    """One variant on the sheet."""

    title: str
    pictures: dict[str, str]
    findings: list[str]


CSS = (
    "body{background:#fdf9ef;color:#221f1a;font:15px sans-serif;margin:16px}"
    "main{display:flex;flex-wrap:wrap;gap:18px}figure{margin:0;border-top:1px solid #d9ccb0;padding-top:6px}"
    "img{height:190px;margin-right:14px}figcaption{font-size:13px}li{color:#86300f}"
)


def packed_size(svg: str) -> int:
    """Answer the bytes of a drawing when compressed for the way."""
    return len(compress(svg.encode(), 9, mtime=0))


def page(entries: Iterable[Entry], plain: bool = False) -> str:
    """Answer the sheet as one HTML page; plain leaves the titles out, to see whether drawings speak."""
    body = "".join(_figure(entry, plain) for entry in entries)
    return f"<!doctype html><meta charset=utf-8><title>Figures</title><style>{CSS}</style><main>{body}</main>"


def _figure(entry: Entry, plain: bool) -> str:
    pictures = "".join(_picture(name, svg) for name, svg in entry.pictures.items())
    sizes = ", ".join(f"{name} {packed_size(svg)} B" for name, svg in entry.pictures.items())
    caption = "" if plain else f"<figcaption>{escape(entry.title)} <small>{escape(sizes)}</small></figcaption>"
    listed = "".join(f"<li>{escape(told)}</li>" for told in entry.findings)
    return (
        f"<figure>{pictures}{caption}<ul>{listed}</ul></figure>" if listed else f"<figure>{pictures}{caption}</figure>"
    )


def _picture(name: str, svg: str) -> str:
    data = b64encode(svg.encode()).decode()
    return f'<img alt="{escape(name)}" src="data:image/svg+xml;base64,{data}">'
