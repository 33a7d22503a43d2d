"""The peer: a general-purpose document database in the page that replicates to a server of its kind."""

import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import httpx
from playwright.sync_api import Page

from tests.bench.peer.install import HERE
from tests.bench.peer.scenes import Scene, Stage
from tests.e2e.conftest import free_port


@dataclass(frozen=True)
class Setting:
    """How the peer is set up; ``store`` is its way of using the browser's database."""

    store: str
    batch_size: int
    checkpoint: bool
    flushed: bool = False

    @property
    def name(self) -> str:
        """In words."""
        kept = "checkpoints kept" if self.checkpoint else "no checkpoints"
        return f"peer, {self.store}, batches of {self.batch_size}, {kept}{', disk flushed' * self.flushed}"


AS_IT_COMES = Setting("idb", 100, checkpoint=True)
TUNED = [Setting(store, 1000, checkpoint) for store in ("idb", "indexeddb") for checkpoint in (True, False)]
FLUSHED = [replace(setting, flushed=True) for setting in TUNED if setting.store == "indexeddb"]
"""With what is said to be held on the disk, as ours."""

_FILL = """async ([store, name, docs]) => {
  const remote = new PouchDB(`${location.origin}/${name}`);
  await remote.info();
  const local = new PouchDB(name, { adapter: store });
  const answers = await local.bulkDocs(docs);
  globalThis.peer = { local, remote: new PouchDB(`${location.origin}/${name}`, { skip_setup: true }) };
  return answers.filter((one) => one.ok).length;
}"""
_SEND = """async ([batch_size, checkpoint]) => {
  const { local, remote } = globalThis.peer;
  const from = performance.now();
  const tuned = { batch_size, batches_limit: 10, ...(checkpoint ? {} : { checkpoint: false }) };
  const told = await local.replicate.to(remote, tuned);
  return [performance.now() - from, told.docs_written];
}"""


@contextmanager
def peer_server(folder: Path, *, flushed: bool) -> Iterator[str]:
    """Serve the peer on LevelDB in a folder until the block ends; yield its address."""
    port = free_port()
    folder.mkdir()
    words = ["node", str(HERE / "server.mjs"), str(port), str(folder), *(["flushed"] if flushed else [])]
    process = subprocess.Popen(words, cwd=HERE)
    address = f"http://127.0.0.1:{port}"
    try:
        for _ in range(200):
            assert process.poll() is None, "the peer's server stopped at its start"
            try:
                httpx.get(address, timeout=2)
                break
            except httpx.TransportError:
                time.sleep(0.05)
        yield address
    finally:
        process.terminate()
        process.wait(10)


def fill(page: Page, address: str, setting: Setting, name: str, events: list[dict[str, Any]]) -> None:
    """Open the peer's page and write the same check-ins under the same ids."""
    page.goto(f"{address}/_page/{setting.store}")
    documents = [{"_id": one["id"], "seq": seq, **_rest(one)} for seq, one in enumerate(events, start=1)]
    assert page.evaluate(_FILL, [setting.store, name, documents]) == len(events)


def _rest(event: dict[str, Any]) -> dict[str, Any]:
    return {name: value for name, value in event.items() if name != "id"}


def send(page: Page, scene: Scene, setting: Setting, address: str, name: str, count: int) -> float:
    """Replicate; answer the milliseconds until the peer's server has acknowledged all."""
    Stage(page).enter(scene)
    took, written = page.evaluate(_SEND, [setting.batch_size, setting.checkpoint])
    assert written == count
    assert httpx.get(f"{address}/{name}").json()["doc_count"] == count
    return float(took)
