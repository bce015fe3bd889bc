#!/usr/bin/env bash
# The arrows the linker cannot hold: SQLite and date lie in /usr/include for everyone.
set -u
cd "$(git rev-parse --show-toplevel 2>/dev/null || dirname "$0")" || exit 1
fault=0
forbid() {  # forbid "what" PATTERN PLACES...
  local what=$1 pattern=$2
  shift 2
  local found
  found=$(grep -rnE --include='*.h' --include='*.cpp' "$pattern" "$@")
  if [ -n "$found" ]; then
    printf 'not allowed, %s:\n%s\n' "$what" "$found"
    fault=1
  fi
}
forbid 'Qt in core or storage' '#include <(Q[A-Z]|Qt)' core storage
forbid 'SQLite outside storage' '#include <sqlite3' core app
forbid 'sqlite3.h in a header' '#include <sqlite3' $(find storage -name '*.h')
forbid 'date outside core/calendar' '#include <date/' core/[!c]* storage app
forbid 'core knowing a layer above' '#include "(storage|app)/' core
forbid 'base, calendar, units or orchard knowing a folder of core above them' \
  '#include "core/(closing|crews|edit|exchange|labour|material|phenology|planning|programme|sheet|targets|weather)/' \
  core/base core/calendar core/units core/orchard
forbid 'storage knowing the app' '#include "app/' storage
forbid 'storage in windows, models, paper, words, look' '#include "storage/' \
  app/windows app/models app/paper app/words app/look
forbid 'widgets in paper or words' '#include <QtWidgets|#include <QWidget|#include "app/(windows|models|look)/' \
  app/paper app/words
forbid 'windows in models or look' '#include "app/windows/' app/models app/look
forbid 'the clock in core or storage' 'system_clock|steady_clock|time\(nullptr\)|std::time\(' core storage
exit $fault
