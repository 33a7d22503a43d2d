# Read by demo.sh, test.sh, check.sh and lock.sh with the checkout as the current folder: the environment in .venv, and what it holds.
# POSIX sh. Needs Python 3.11 or newer and the package registries; neither git, uv nor node.

VENV=.venv
LOG=$VENV/install.log
# A person's own pip settings for installing elsewhere must not lead these installs astray.
export PIP_USER=0 PIP_DISABLE_PIP_VERSION_CHECK=1 PIP_NO_INPUT=1
unset PIP_TARGET PIP_PREFIX PYTHONHOME PYTHONPATH

say() { printf '%s\n' "$*"; }

fail() {
  printf '\n%s\n' "$*" >&2
  exit 1
}

find_python() {
  for name in python3 python3.11 python3.12 python3.13 python3.14 python3.15 python; do
    if "$name" -c 'import sys; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; then
      command -v "$name"
      return
    fi
  done
  fail "Steadfoot needs Python 3.11 or newer, and none was found: install python3 from your system's packages or from python.org, then start this again."
}

# A moved checkout or a changed system Python leaves an environment that looks whole and is not.
venv_usable() {
  [ "$(cat $VENV/place 2>/dev/null)" = "$PWD" ] && $VENV/bin/python -c 'import pip' 2>/dev/null
}

make_venv() {
  venv_usable && return
  python=$(find_python) || exit 1
  say "Making a Python environment in $VENV with $("$python" --version)."
  "$python" -m venv --clear $VENV >/dev/null 2>&1 || make_venv_without_ensurepip "$python"
  pwd >$VENV/place
}

# Debian keeps a part of venv in a package of its own.
make_venv_without_ensurepip() {
  advice="Python's venv module is incomplete here: on Debian or Ubuntu run 'sudo apt-get install python3-venv', then start this again."
  if "$1" -m pip --version >/dev/null 2>&1; then
    "$1" -m venv --clear --without-pip $VENV || fail "$advice"
    "$1" -m pip --python $VENV/bin/python install --quiet pip || fail "$advice"
  elif root_apt python3-venv; then
    "$1" -m venv --clear $VENV || fail "$advice"
  else
    fail "$advice"
  fi
}

# Debian packages, where this person may install them without being asked for a password.
root_apt() {
  command -v apt-get >/dev/null 2>&1 || return 1
  as_root='sudo -n env'
  [ "$(id -u)" != 0 ] || as_root='env'
  $as_root true 2>/dev/null || return 1
  say "Installing the Debian packages: $*"
  $as_root DEBIAN_FRONTEND=noninteractive apt-get update -qq >/dev/null &&
    $as_root DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null
}

# Names and contents of the files and folders given, as one short line.
fingerprint() {
  find "$@" \( -name node_modules -o -name coverage -o -name '.?*' ! -name . \) -prune -o -type f ! -name '*.tsbuildinfo' \
    -exec cksum {} + | sort | cksum
}

# Run a command with its output in the log, a dot a second and the time it took.
# The dots are what runs in the background, so that Ctrl-C ends the command itself.
progress() {
  title=$1
  shift
  printf '%s ' "$title"
  began=$(date +%s)
  (while :; do printf . && sleep 1; done) &
  dots=$!
  trap 'kill $dots; exit 130' INT TERM
  if "$@" >>$LOG 2>&1; then status=0; else status=$?; fi
  kill $dots
  wait $dots 2>/dev/null || true
  trap - INT TERM
  printf ' %s s\n' $(($(date +%s) - began))
  return $status
}

# Python compiles what it imports; compiling all of what is installed takes as long as fetching it.
pip_install() { $VENV/bin/python -m pip install --progress-bar off --no-compile "$@"; }

# The last lines of the log, then one sentence that helps.
fail_with_log() {
  if grep -qE 'NewConnectionError|name resolution|timed out|ECONN|ENOTFOUND|EAI_AGAIN|ETIMEDOUT|unreachable|CERTIFICATE' $LOG; then
    fail "$1: no answer from the package registries, so check the network connection or proxy and start this again ($LOG has the details)."
  fi
  # What pip says after the end of a build's output is about pip.
  sed '/\[end of output\]/,$d' $LOG | tail -n 20 >&2
  fail "$1: the lines above and $LOG say why."
}

# A lock is complete, so nothing is resolved: pip before 23.3 looks for the newest release of a package that another one asks
# for with an extra, and then misses its hash.
# install_steadfoot LOCK STAMP [pip options]: the locked packages and Steadfoot itself, in place, with its frontend built.
# STAMP holds what they were made from, so that nothing is done twice; it is written last, so a broken run is begun again.
install_steadfoot() {
  lock=$1 stamp=$2
  shift 2
  make_venv
  wanted=$(fingerprint pyproject.toml "$lock" deploy/build_frontend.py frontend)
  [ "$(cat "$stamp" 2>/dev/null)" = "$wanted" ] && [ -x $VENV/bin/steadfoot ] && [ -d backend/steadfoot/static/app ] && return
  say "Installing Steadfoot into $PWD/$VENV; the first time takes one to three minutes."
  : >$LOG
  rm -f "$stamp"
  progress "1/2 The $(grep -c '==' "$lock") Python packages of $lock" \
    pip_install --require-hashes --no-deps --requirement "$lock" || fail_with_log "The Python packages could not be installed"
  progress "2/2 The phone app, the desk and the server" \
    pip_install --no-deps --editable . "$@" || fail_with_log "Steadfoot could not be built"
  printf '%s\n' "$wanted" >"$stamp"
}

# What the checks and tests need, with python, node and npm first on the PATH.
prepare_tests() {
  install_steadfoot deploy/requirements-test.txt $VENV/test.stamp --no-build-isolation
  [ -x $VENV/bin/npm ] || $VENV/bin/python deploy/build_frontend.py $VENV/bin
  PATH=$PWD/$VENV/bin:$PATH
  export PATH
}

# Run one step, keep going whatever it says, and remember its result and time for the summary.
RESULTS=
FAILED=0
step() {
  name=$1
  shift
  printf '\n== %s\n' "$name"
  began=$(date +%s)
  if "$@"; then remember ok; else remember FAILED; fi
}

remember() {
  [ "$1" = ok ] || FAILED=$((FAILED + 1))
  RESULTS="$RESULTS$(printf '%-8s %4s s  %s' "$1" $(($(date +%s) - began)) "$name")
"
}

# Begin a step that needs one processor only while the next ones run; `joined` waits for it and shows what it said.
beside() {
  BESIDE_NAME=$1 BESIDE_BEGAN=$(date +%s) BESIDE_LOG=$VENV/beside.log
  shift
  "$@" >"$BESIDE_LOG" 2>&1 &
  BESIDE=$!
}

joined() {
  name=$BESIDE_NAME began=$BESIDE_BEGAN
  if wait "$BESIDE"; then word=ok; else word=FAILED; fi
  printf '\n== %s, beside the others\n' "$name"
  cat "$BESIDE_LOG"
  remember $word
}

summary() {
  printf '\n== Summary\n%s' "$RESULTS"
  [ $FAILED = 0 ] || fail "$FAILED of the steps above failed."
}
