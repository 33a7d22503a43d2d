# Read by test.sh after prepare.sh: a Chromium for the browser tests, its path in STEADFOOT_CHROMIUM.

# The series that the pinned Playwright was made for; it carries its own libraries and one font.
PACKED_CHROMIUM=@sparticuz/chromium@147.0.2

# Debian's shell of Chromium is the same engine without windows: it takes half the time of the whole browser.
find_or_install_chromium() {
  STEADFOOT_CHROMIUM=${STEADFOOT_CHROMIUM:-$(command -v chromium-headless-shell || true)}
  if [ -z "$STEADFOOT_CHROMIUM" ]; then
    if root_apt chromium-headless-shell fonts-dejavu-core; then
      STEADFOOT_CHROMIUM=$(command -v chromium-headless-shell)
    else
      STEADFOOT_CHROMIUM=$(installed_chromium || true)
    fi
  fi
  [ -n "$STEADFOOT_CHROMIUM" ] || unpack_chromium
  export STEADFOOT_CHROMIUM
  say "Browser tests use $STEADFOOT_CHROMIUM"
}

installed_chromium() {
  command -v chromium || command -v chromium-browser || command -v google-chrome || packed_chromium
}

packed_chromium() {
  [ -x "$VENV/chromium/chromium" ] && printf '%s\n' "$PWD/$VENV/chromium/chromium"
}

# Without root: npm carries a Chromium, compressed, with the libraries and the font that it needs.
unpack_chromium() {
  say "Unpacking $PACKED_CHROMIUM, as Debian's chromium cannot be installed without root."
  home=$PWD/$VENV/chromium
  mkdir -p "$home"
  npm install --prefix "$home" --ignore-scripts --no-audit --no-fund --silent "$PACKED_CHROMIUM" ||
    fail "The browser for the tests could not be fetched: check the network connection, or set STEADFOOT_CHROMIUM to a Chromium on this machine."
  packed=$home/node_modules/@sparticuz/chromium/bin
  decompress "$packed/chromium.br" "$home/headless"
  chmod +x "$home/headless"
  for part in al2023 fonts swiftshader; do
    decompress "$packed/$part.tar.br" "$home/$part.tar"
    python -m tarfile --extract "$home/$part.tar" "$home"
    rm "$home/$part.tar"
  done
  write_launcher >"$home/chromium"
  chmod +x "$home/chromium"
  STEADFOOT_CHROMIUM=$home/chromium
}

decompress() {
  node --eval 'const { createReadStream: from, createWriteStream: to } = require("node:fs");
    from(process.argv[1]).pipe(require("node:zlib").createBrotliDecompress()).pipe(to(process.argv[2]));' "$1" "$2"
}

# The packed font settings name the folders of another machine, so the launcher brings its own.
write_launcher() {
  cat >"$home/fonts.conf" <<EOF
<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>$home/fonts</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir>$home/fonts-cache</cachedir>
</fontconfig>
EOF
  cat <<EOF
#!/bin/sh
export FONTCONFIG_FILE="$home/fonts.conf" LD_LIBRARY_PATH="$home/lib"
exec "$home/headless" --no-sandbox --no-zygote "\$@"
EOF
}
