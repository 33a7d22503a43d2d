# Read by test.sh after prepare.sh: a Chromium for the browser tests, its path in STEADFOOT_CHROMIUM.

# The series that the pinned Playwright was made for; it carries its own libraries and one font.
PACKED_CHROMIUM=@sparticuz/chromium@147.0.2

find_or_install_chromium() {
  STEADFOOT_CHROMIUM=${STEADFOOT_CHROMIUM:-$(installed_chromium || true)}
  if [ -z "$STEADFOOT_CHROMIUM" ]; then
    if root_apt chromium fonts-dejavu-core; then
      STEADFOOT_CHROMIUM=$(installed_chromium)
    else
      unpack_chromium
    fi
  fi
  export STEADFOOT_CHROMIUM
  say "Browser tests use $STEADFOOT_CHROMIUM"
}

installed_chromium() {
  command -v chromium || command -v chromium-browser || command -v google-chrome || packed_chromium
}

packed_chromium() {
  [ -x $VENV/chromium/chromium ] && printf '%s\n' "$PWD/$VENV/chromium/chromium"
}

# Without root: npm carries a Chromium; it unpacks into the temporary folder that it is given.
unpack_chromium() {
  say "Unpacking $PACKED_CHROMIUM, as Debian's chromium cannot be installed without root."
  mkdir -p $VENV/chromium
  npm install --prefix $VENV/chromium --ignore-scripts --no-audit --no-fund --silent "$PACKED_CHROMIUM" ||
    fail "The browser for the tests could not be fetched: check the network connection, or set STEADFOOT_CHROMIUM to a Chromium on this machine."
  (
    cd $VENV/chromium
    AWS_LAMBDA_JS_RUNTIME=nodejs22.x TMPDIR=$PWD node --input-type=module --eval '
      import chromium from "@sparticuz/chromium";
      console.log(await chromium.executablePath());'
  )
}
