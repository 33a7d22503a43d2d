"""Sync of 1,000 queued check-ins, ours and the peer's, in the same Chromium.

Run as ``python -m tests.bench.peer [--quick]`` with npm on the path. Prints milliseconds and bytes, medians of some
rounds, and ratios to the peer's best setting; never fails on time.

What each does before it says "received": ours has checked every check-in, stored it and flushed the disk, and the page
draws what has arrived. The peer's server stores documents; its LevelDB hands writes to the
system without a flush, so that they outlive a killed process and not a power cut, unless it says "disk flushed". The
peer's page draws nothing.
"""

import sys

from tests.bench.peer import theirs
from tests.bench.peer.measuring import Compared, compare, place
from tests.bench.peer.scenes import SCENES

ROUNDS, QUICK_ROUNDS = 5, 2


def tell(found: Compared) -> None:
    """Print one scene."""
    print(f"\n{found.scene.name}")
    for taken in (found.mine, *found.peers.values()):
        print(f"  {taken.words()}")
    print(
        f"  times the peer's best: time {found.ratio('time'):.1f}, bytes {found.ratio('bytes'):.1f}; "
        f"with its disk flushed: time {found.ratio('time', flushed=True):.1f}"
    )


def main() -> None:
    """Measure and print."""
    quick = "--quick" in sys.argv
    with place() as at:
        for number, scene in enumerate(SCENES):
            settings = [*([theirs.AS_IT_COMES] if number == 0 else []), *theirs.TUNED, *theirs.FLUSHED]
            tell(compare(at, scene, settings, QUICK_ROUNDS if quick else ROUNDS))


if __name__ == "__main__":
    main()
