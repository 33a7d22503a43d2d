#!/bin/sh
# What Steadfoot is made of, whether any of it is known to be weak, and whether a secret was ever committed.
#   sh deploy/audit.sh              everything; lists of parts go to audit/ (CycloneDX); ends with 1 if something was found
#   sh deploy/audit.sh offline      without asking the advisory services
# What could not be asked is said and is no "ok": it ends with 2. Run it daily on a machine with a network.
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

ASKED=0
python_weaknesses() {
  "$VENV/bin/python" -m venv "$VENV/audit" && "$VENV/audit/bin/python" -m pip install --quiet "pip-audit>=2.9,<3" || return 2
  status=0
  "$VENV/audit/bin/pip-audit" --strict --disable-pip --require-hashes --requirement deploy/requirements.txt >"$LOG.audit" 2>&1 || status=$?
  cat "$LOG.audit"
  [ $status = 0 ] && return 0
  grep -q '^Found [1-9]' "$LOG.audit" && return 1
  return 2
}

npm_weaknesses() {
  status=0
  npm --prefix frontend audit --omit=dev >"$LOG.audit" 2>&1 || status=$?
  cat "$LOG.audit"
  [ $status = 0 ] && return 0
  grep -q 'vulnerabilit' "$LOG.audit" && return 1
  return 2
}

ask() {
  printf '\n== %s\n' "$1"
  began=$(date +%s) name=$1 status=0
  "$2" || status=$?
  case $status in
  0) remember ok ;;
  2) ASKED=$((ASKED + 1)) && remember "NOT ASKED" && FAILED=$((FAILED - 1)) ;;
  *) remember FAILED ;;
  esac
}

parts() {
  mkdir -p audit
  python -m deploy.audit sbom >audit/python.cdx.json &&
    npm --prefix frontend sbom --package-lock-only --sbom-format cyclonedx --omit dev >audit/npm.cdx.json &&
    echo "audit/python.cdx.json, audit/npm.cdx.json: $(grep -h '"purl"' audit/*.cdx.json | sort -u | wc -l | tr -d ' ') parts"
}

prepare_tests
step "list of parts" parts
step "licences" python -m deploy.audit licences
step "secrets in the history" python -m deploy.audit secrets
if [ "${1:-}" = offline ]; then
  say "The advisory services were not asked, as told."
else
  ask "known weaknesses of Python packages" python_weaknesses
  ask "known weaknesses of npm packages" npm_weaknesses
fi
summary
[ $ASKED = 0 ] || { say "$ASKED of the advisory services could not be asked: nothing is known of those parts, good or bad."; exit 2; }
