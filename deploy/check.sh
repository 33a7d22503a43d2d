#!/bin/sh
# Everything that can be said about the code without running it: format, lint, types, imports, sizes, generated files.
#   sh deploy/check.sh        all of them run; a summary ends it, non-zero if any failed
set -eu
cd "$(dirname "$0")/.."
. deploy/prepare.sh

# A file that grew past this wants to be split.
MAX_LINES=300

files_short_enough() {
  find backend/steadfoot frontend/src tests \( -name generated -o -name static -o -name node_modules -o -name versions \) -prune -o \
    -type f \( -name '*.py' -o -name '*.ts' -o -name '*.tsx' -o -name '*.css' \) -exec awk -v most=$MAX_LINES '
      FNR == 1 && NR > 1 && length_so_far > most { print file ": " length_so_far " lines, at most " most; bad = 1 }
      { file = FILENAME; length_so_far = FNR }
      END { if (length_so_far > most) { print file ": " length_so_far " lines, at most " most; bad = 1 }; exit bad }
    ' {} +
}

prepare_tests
step "format" ruff format --check .
step "lint" ruff check --output-format concise .
step "types" mypy
step "imports" lint-imports
step "lock files fit pyproject.toml" python -m pip check
step "file sizes" files_short_enough
step "frontend types" npm --prefix frontend run check
step "generated files" npm --prefix frontend run check:generated
summary
