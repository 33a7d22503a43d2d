#!/bin/sh
# Installs what the tests need into .venv and runs every check and test, the second time over on PostgreSQL.
#   sh deploy/test.sh                           everything; all steps run, a summary ends it, non-zero if any failed
#   sh deploy/test.sh tests/rules -k pain       only pytest, with these arguments
# STEADFOOT_CHROMIUM may name a Chromium to use for the browser tests; else one is found or installed.
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh
. deploy/chromium.sh

# The rules can hurt someone: not a branch of theirs goes untried.
rules_covered() {
  python -m pytest tests/rules tests/outside --cov=steadfoot.rules --cov-report= &&
    python -m coverage report --include='*/steadfoot/rules/*' --fail-under=100
}

prepare_tests
find_or_install_chromium
if [ $# -gt 0 ]; then
  exec python -m pytest "$@"
fi

beside "checks" sh deploy/check.sh
step "frontend tests" npm --prefix frontend test
step "rules, every line and branch, and outside references" rules_covered
joined
step "figures" python -m pytest -n 2 --dist loadgroup tests/figures
# Three at a time, a file to each: these start servers, browsers and databases of their own, and wait for them.
# In the order given, where the long files come first; else what has few tests would come last, however long they take.
step "features and sync" python -m pytest -n 3 --dist loadfile --no-loadscope-reorder tests/sync tests/features
step "end to end" python -m pytest -n 2 --dist loadfile tests/e2e
# What reaches the database; rules, texts and pages do not care which one it is.
step "stores and sync on PostgreSQL" \
  env STEADFOOT_TEST_DATABASE=postgresql python -m pytest -n 3 --dist loadfile --no-loadscope-reorder \
  tests/sync/test_order.py tests/features/operation/test_schema.py tests/sync/test_due.py \
  tests/features/identity/test_clients.py tests/features/identity/test_pairing.py tests/features/intake \
  tests/features/identity/test_people.py tests/features/identity/test_practice_words.py tests/features/identity/test_totp.py \
  tests/features/checkins/test_event_identity.py tests/features/checkins/test_acknowledged.py \
  tests/features/checkins/test_refused.py tests/features/checkins/test_retries.py \
  tests/features/checkins/test_timeline.py tests/features/monitoring/test_flags.py \
  tests/features/monitoring/test_rebuild.py tests/features/monitoring/test_progression_decisions.py \
  tests/features/audit/test_chain.py tests/features/custody/test_erase.py \
  tests/features/programs/test_publish.py \
  tests/features/programs/test_drafts_and_templates.py tests/features/trips/test_trip.py \
  tests/sync/test_transactions.py tests/sync/test_commit.py tests/sync/test_together.py
summary
