#!/bin/sh
# Tests the README's two commands on bare machines: makes a bare Debian of each release in a
# temporary folder, puts a clean clone of this repository there, and runs both commands. Needs root
# and some 4 GB of disk; takes minutes; not part of the test run.
#
#   sh tests/fresh/run.sh                  Debian 12 and 13
#   sh tests/fresh/run.sh trixie           one of them
#   MIRROR=http://... KEEP=1 sh ...        another mirror; keep the folder afterwards
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
. "$root/web/setup.sh"

# The mirror that this machine takes its own packages from; a folder of security fixes has no releases.
mirror=${MIRROR:-$(apt-get indextargets --format '$(REPO_URI)' 'Created-By: Packages' |
  sed '/security/d' | head -n 1)}
port=${PORT:-4871}
certificates=/etc/ssl/certs/ca-certificates.crt

make_root() { # RELEASE FOLDER
  debootstrap --variant=minbase "$1" "$2" "$mirror" >"$2.log" 2>&1 ||
    die "debootstrap could not make a $1 from $mirror; see $2.log."
}

# A bare root reaches the registries the way this machine does: its name servers, its proxies, its
# certificates and its npm registry.
lend_network() { # FOLDER
  cp -L /etc/resolv.conf "$1/etc/resolv.conf"
  grep -ls 'Proxy' /etc/apt/apt.conf /etc/apt/apt.conf.d/* | while read -r file; do
    cp "$file" "$1/etc/apt/apt.conf.d/"
  done
  [ ! -f "$certificates" ] || cp "$certificates" "$1/etc/lent-certificates.crt"
}

# Runs a script inside, with its own /proc and shared memory, all gone when it ends.
inside() { # FOLDER SCRIPT
  unshare --mount --pid --fork sh -c '
    mount -t proc proc "$1/proc"
    mkdir -p "$1/dev/shm"
    mount -t tmpfs tmpfs "$1/dev/shm"
    exec chroot "$1" env -i HOME=/root PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin \
      LANG=C.UTF-8 CI=true NODE_EXTRA_CA_CERTS=/etc/lent-certificates.crt \
      ${2:+"npm_config_registry=$2"} PORT="$3" bash -c "cd /treadwater
$4"
  ' sh "$1" "$(npm config get registry 2>/dev/null)" "$port" "$2" </dev/null
}

# Waits for the one line with the address, then asks that address for the page.
serve_and_fetch='
  sh web/serve.sh >serve.log 2>&1 &
  server=$!
  until grep -q "ready at" serve.log; do
    kill -0 $server 2>/dev/null || { cat serve.log; exit 1; }
    sleep 1
  done
  cat serve.log
  exec 3<>/dev/tcp/127.0.0.1/$PORT
  printf "GET / HTTP/1.0\r\nHost: localhost\r\n\r\n" >&3
  timeout 10 cat <&3 >page.txt || true
  kill $server
  head -n 1 page.txt
  grep -q "^HTTP/1.. 200" page.txt && grep -qi "<title[^>]*>.*treadwater" page.txt'

run_tests='
  sh tests/run.sh'

# Again: nothing may be installed or built a second time.
run_again='
  sh web/build.sh | tee again.log
  ! grep -Eq "installing|Building|Linking|bringing" again.log && grep -q "up to date" again.log'

prove() { # RELEASE
  place="$work/$1"
  say "$1: making a bare system"
  make_root "$1" "$place"
  lend_network "$place"
  git clone --quiet --no-hardlinks "$root" "$place/treadwater" ||
    die "could not clone $root; commit first."
  for step in serve_and_fetch run_tests run_again; do
    say "$1: $step"
    eval "script=\$$step"
    # shellcheck disable=SC2154 # set by eval
    if inside "$place" "$script" >"$place.$step.log" 2>&1; then
      say "$1: $step went well: $(tail -n 1 "$place.$step.log")"
    else
      say "$1: $step FAILED; what failed, and the end of its output:"
      grep -A 14 '^✖' "$place.$step.log" || true
      tail -n 40 "$place.$step.log"
      failed="$failed $1:$step"
      return 0
    fi
  done
}

[ "$(id -u)" -eq 0 ] || die "needs root, to make and enter a bare Debian."
[ -n "$mirror" ] || die "no Debian mirror in this machine's package sources; name one with MIRROR=."
need_packages debootstrap git
# The six X are for mktemp to fill.
work=$(mktemp -d "${TMPDIR:-/tmp}/treadwater-fresh.XXXXXX")
[ -n "${KEEP:-}" ] || trap 'rm -rf "$work"' EXIT
failed=
[ $# -gt 0 ] || set -- bookworm trixie
for release in "$@"; do
  prove "$release"
done
[ -z "$failed" ] || die "failed:$failed"
say "both commands work on: $*"
