# Debian packages, installed when they are missing.  Sourced: install_packages NAME...
# As root, or through sudo.

install_packages()
{
    missing=
    for package in "$@"; do
        dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing="$missing $package"
    done
    [ -n "$missing" ] || return 0
    as_root=
    if [ "$(id -u)" != 0 ]; then
        command -v sudo >/dev/null || { echo "needed packages:$missing; install them as root" >&2; return 1; }
        as_root=sudo
    fi
    echo "installing:$missing"
    log=$(mktemp)
    # The list of packages may be missing (a new machine) or old: fetch it first.
    if ! { $as_root apt-get update && DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y --no-install-recommends $missing; } >"$log" 2>&1; then
        cat "$log" >&2
        rm -f "$log"
        return 1
    fi
    rm -f "$log"
}

# What building the program takes.
build_packages="gcc libc6-dev make cmake pkg-config libxlsxwriter-dev libcjson-dev libinih-dev libcsv-dev libminizip-dev zlib1g-dev libglpk-dev"
