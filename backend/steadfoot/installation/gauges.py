"""How the installation stands, as numbers that a scraper reads. Labels come from lists in the code, not from data."""

from collections.abc import Iterator
from datetime import timedelta

from prometheus_client.core import GaugeMetricFamily
from prometheus_client.metrics_core import Metric
from sqlalchemy.exc import OperationalError

from steadfoot import __version__
from steadfoot.installation.service import Installation
from steadfoot.installation.standing import Standing

_SINCE = (("1d", timedelta(days=1)), ("7d", timedelta(days=7)), ("30d", timedelta(days=30)))


def _one(name: str, text: str, value: float) -> Metric:
    return GaugeMetricFamily(f"steadfoot_{name}", text, value=value)


def _phones(now: Standing) -> Metric:
    family = GaugeMetricFamily(
        "steadfoot_clients_heard", "Clients with a phone, by how long ago it was heard", labels=["within"]
    )
    ages = [None if heard is None else now.at - heard for _paired, heard in now.contacts]
    counts = dict.fromkeys([*(name for name, _ in _SINCE), "longer", "never"], 0)
    for age in ages:
        name = "never" if age is None else next((name for name, most in _SINCE if age <= most), "longer")
        counts[name] += 1
    for name, count in counts.items():
        family.add_metric([name], count)
    return family


def _waiting(now: Standing) -> Iterator[Metric]:
    count = GaugeMetricFamily("steadfoot_waiting", "Things that wait, by queue", labels=["queue"])
    oldest = GaugeMetricFamily("steadfoot_waiting_oldest_seconds", "Age of the oldest, by queue", labels=["queue"])
    for name, waits in now.waiting.items():
        count.add_metric([name], waits.number)
        oldest.add_metric([name], (now.at - waits.oldest).total_seconds() if waits.oldest else 0)
    yield from (count, oldest)


def _backup(now: Standing) -> Iterator[Metric]:
    """No age where there is no backup: an alarm asks for absence too."""
    if now.last_backup is not None:
        yield _one("backup_last_ok", "1 if the last attempt at a backup went well", now.last_backup.ok)
    if now.good_backup is None:
        return
    yield _one("backup_bytes", "Size of the last good backup", now.good_backup.size_bytes)
    yield _one("backup_age_seconds", "Age of the last good backup", (now.at - now.good_backup.at).total_seconds())
    if now.good_backup.verified_at is not None:
        age = now.at - now.good_backup.verified_at
        yield _one("backup_verified_age_seconds", "Time since a backup was restored and counted", age.total_seconds())


def _machine(now: Standing) -> Iterator[Metric]:
    yield _one("database_bytes", "Size of the database", now.size_bytes)
    if now.log_bytes is not None:
        yield _one("wal_bytes", "Size of SQLite's write-ahead log", now.log_bytes)
    yield _one("disk_free_bytes", "Space left where the data lie", now.disk_free_bytes)
    yield _one("disk_total_bytes", "Size of the disk where the data lie", now.disk_total_bytes)
    if now.look is not None and now.look.expires_at is not None:
        left = now.look.expires_at - now.at
        yield _one("certificate_seconds_left", "Until the public address's certificate ends", left.total_seconds())


def _info(now: Standing) -> Metric:
    family = GaugeMetricFamily("steadfoot_build_info", "1; the labels say what runs", labels=["version", "schema"])
    family.add_metric([__version__, now.revision], 1)
    return family


def read(installation: Installation) -> Iterator[Metric]:
    """Answer every gauge; without a database only that there is none, so that counts are answered still."""
    try:
        with installation.database.read() as session:
            now = installation.standing(session, None, installation.clock())
    except OperationalError:
        yield _one("database_up", "1 if the database answers", 0)
        return
    yield _one("database_up", "1 if the database answers", 1)
    yield from (_info(now), _phones(now), *_waiting(now), *_backup(now), *_machine(now))
