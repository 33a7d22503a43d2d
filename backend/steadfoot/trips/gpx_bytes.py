"""The bytes of a GPX file: packed or not, in pieces, and never more than a stated size."""

import zlib
from collections.abc import Iterator
from typing import BinaryIO, Final

UNPACKED_MAX_MB: Final = 64
"""A five-day walk at a point a second is some 20 MB; what is larger is refused before any of it is read as XML."""
_MB: Final = 1_000_000
_PIECE: Final = 64 * 1024
_GZIP_MAGIC: Final = b"\x1f\x8b"
_GZIP_WINDOW: Final = 16 + zlib.MAX_WBITS


class FileTooLarge(ValueError):
    """More bytes than are taken, unpacked."""

    def __init__(self) -> None:
        self.max_mb = UNPACKED_MAX_MB
        super().__init__(f"The file is larger than {UNPACKED_MAX_MB} MB unpacked. Split the way into its days.")


class PackedBadly(ValueError):
    """A gzip file that breaks off or is damaged."""

    def __init__(self) -> None:
        super().__init__("The file begins like a gzip file but cannot be unpacked: it is damaged or breaks off.")


def pieces(file: BinaryIO) -> Iterator[bytes]:
    """Answer the unpacked bytes of a file from its beginning, at most 64 kB at a time.

    All is measured before the first piece is given, so that a file which is too large costs no parsing.

    Raises:
        FileTooLarge: it is larger than ``UNPACKED_MAX_MB``.
        PackedBadly: it is a damaged gzip file.
    """
    size = 0
    for piece in _unpacked(file):
        size += len(piece)
        if size > UNPACKED_MAX_MB * _MB:
            raise FileTooLarge
    yield from _unpacked(file)


def _unpacked(file: BinaryIO) -> Iterator[bytes]:
    file.seek(0)
    packed = file.read(len(_GZIP_MAGIC)) == _GZIP_MAGIC
    file.seek(0)
    raw = iter(lambda: file.read(_PIECE), b"")
    return _inflated(raw) if packed else raw


def _inflated(raw: Iterator[bytes]) -> Iterator[bytes]:
    """Unpack with a bound on every piece: a small file that unpacks to a large one takes no memory."""
    inflater = zlib.decompressobj(_GZIP_WINDOW)
    for packed in raw:
        waiting = packed
        while waiting and not inflater.eof:
            yield _inflate(inflater, waiting)
            waiting = inflater.unconsumed_tail
    if not inflater.eof:
        raise PackedBadly


def _inflate(inflater: "zlib._Decompress", packed: bytes) -> bytes:
    try:
        return inflater.decompress(packed, _PIECE)
    except zlib.error as error:
        raise PackedBadly from error
