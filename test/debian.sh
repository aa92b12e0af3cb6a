# Sourced by the test runs that need Debian's programs: installs those that are missing.
# need NAME-OF-RUN FILE:PACKAGE...   a file to look for, and the package that brings it
need() {
  local run="$1" missing=()
  shift
  for pair in "$@"; do
    [[ -e "${pair%%:*}" ]] || missing+=("${pair##*:}")
  done
  ((${#missing[@]} > 0)) || return 0
  if ! command -v apt-get >/dev/null; then
    echo "$run needs ${missing[*]}, and there is no apt-get here. Run it on Debian or Ubuntu." >&2
    exit 1
  fi
  if [[ "$(id -u)" != 0 ]]; then
    echo "$run needs ${missing[*]}. Install them first: sudo apt-get install ${missing[*]}" >&2
    exit 1
  fi
  apt-get update
  DEBIAN_FRONTEND=noninteractive apt-get install --yes --no-install-recommends "${missing[@]}"
}
