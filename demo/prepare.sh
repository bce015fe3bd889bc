# Sourced by demo/run and tests/run: installs what is missing and builds. Debian 12.
# Everything a build, a test or a start needs is named here, so that a bare machine has it.

run_packages=(
  g++ cmake ninja-build pkg-config git ca-certificates
  qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
  qt6-qpa-plugins libqt6svg6 libqt6opengl6-dev libgl-dev libxkbcommon-dev
  libhowardhinnant-date-dev libexpected-dev libtomlplusplus-dev nlohmann-json3-dev
  libcli11-dev libsqlite3-dev liblemon-dev fonts-noto-core
)

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

install_missing() {
  local missing=() name
  for name in "$@"; do
    [ "$(dpkg-query -W -f '${db:Status-Status}' "$name" 2>/dev/null)" = installed ] \
      || missing+=("$name")
  done
  [ ${#missing[@]} -eq 0 ] && return
  echo "Installing: ${missing[*]}"
  as_root apt-get update -qq
  as_root env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -qq --no-install-recommends "${missing[@]}" > /dev/null
}

# configure_and_build FOLDER [CMake options]; quick where nothing changed.
configure_and_build() {
  local folder=$1
  shift
  local log=$folder.configure.log
  mkdir -p "$(dirname "$folder")"
  if ! cmake -S . -B "$folder" -G Ninja "$@" > "$log" 2>&1; then
    cat "$log" >&2
    return 1
  fi
  rm -f "$log"
  cmake --build "$folder"
}
