"""What an app leaves behind."""

import gc
import weakref
from pathlib import Path

from fastapi.testclient import TestClient

from steadfoot.app import create_app
from steadfoot.core.database import Database
from steadfoot.core.settings import Settings


def test_an_app_that_nobody_holds_any_more_is_gone(database: Database, tmp_path: Path) -> None:
    app = create_app(Settings(data_dir=tmp_path), database)
    assert TestClient(app, base_url="https://testserver").get("/readyz").status_code == 200
    gone = weakref.ref(app)
    del app
    gc.collect()
    assert gone() is None
