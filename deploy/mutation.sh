#!/bin/sh
# Tests the tests of the rules: changes the rules in one small way after the other and counts the changes that no test notices.
#   sh deploy/mutation.sh                             all of backend/steadfoot/rules, with tests/rules and tests/outside
#   sh deploy/mutation.sh 'steadfoot.rules.dose.*'    only the changes so named; all arguments go to `mutmut run`
# Prints killed and survived by file, the score and the survivors' names; ends with 1 where the score is below MIN_PERCENT.
# For a schedule (cron, nightly CI) and not for test.sh: about 5500 changes take 10 to 15 minutes on two cores, and a survivor
# asks for thought, not for a stop. Has an environment of its own in .venv/mutation and works on a copy in a temporary folder.
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

MIN_PERCENT=90
LOCK=deploy/requirements-mutation.txt
HERE=$PWD
VENV=.venv/mutation
LOG=$VENV/mutation.log
FOUND=$VENV/found.txt
SURVIVORS=$VENV/survivors.diff

install_mutmut() {
  make_venv
  wanted=$(cksum <$LOCK)
  [ "$(cat $VENV/lock.stamp 2>/dev/null)" = "$wanted" ] && return
  : >$LOG
  progress "The $(grep -c '==' $LOCK) Python packages of $LOCK" pip_install --require-hashes --no-deps --requirement $LOCK ||
    fail_with_log "The Python packages could not be installed"
  printf '%s\n' "$wanted" >$VENV/lock.stamp
}

# mutmut changes what lies under src/ and runs the tests beside it.
lay_out() {
  copy=$(mktemp -d)
  trap 'rm -rf "$copy"' EXIT
  mkdir "$copy/src"
  cp -R backend/steadfoot "$copy/src/steadfoot"
  rm -rf "$copy/src/steadfoot/static"
  cp -R tests "$copy/tests"
  cat >"$copy/pyproject.toml" <<'END'
[tool.pytest.ini_options]
addopts = ["-p", "no:cacheprovider"]
[tool.mutmut]
source_paths = ["src"]
only_mutate = ["src/steadfoot/rules/*.py"]
pytest_add_cli_args_test_selection = ["tests/rules", "tests/outside"]
pytest_add_cli_args = ["-x", "-q"]
also_copy = ["tests"]
use_git_change_detection = false
END
}

in_copy() { (cd "$copy" && "$HERE/$VENV/bin/mutmut" "$@"); }

# What each survivor changed, for whoever writes the test that is missing.
show_survivors() {
  : >$SURVIVORS
  sed -n 's/^ *\(.*\): \(survived\|no tests\)$/\1/p' $FOUND | while read -r name; do
    in_copy show "$name" >>$SURVIVORS </dev/null
  done
}

# Lines of "name: status"; a change that makes the tests run for ever is noticed too.
report() {
  awk -F': ' -v least=$MIN_PERCENT '
    NF != 2 || $2 == "not checked" || $2 == "skipped" { next }
    { sub(/^ */, "", $1); split($1, part, "."); file = part[3] ".py"; all[file]++; total++ }
    $2 == "killed" || $2 == "timeout" { killed[file]++; caught++; next }
    { names[++alive] = $2 ": " $1 }
    END {
      if (!total) { print "Nothing was changed, so nothing was tested."; exit 1 }
      printf "%-24s %7s %9s\n", "file", "killed", "survived"
      for (file in all) printf "%-24s %7d %9d\n", file, killed[file], all[file] - killed[file] | "sort"
      close("sort")
      for (i = 1; i <= alive; i++) print names[i]
      printf "%d of %d killed, %.1f percent; at least %d are asked for.\n", caught, total, 100 * caught / total, least
      exit caught * 100 < least * total
    }' $FOUND
}

install_mutmut
lay_out
: >$LOG
progress "Changing the rules and running their tests" in_copy run "$@" || fail_with_log "The run was broken off"
in_copy results --all true >$FOUND
progress "Noting what the survivors changed in $SURVIVORS" show_survivors || fail_with_log "The survivors could not be shown"
report
