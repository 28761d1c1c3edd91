#!/usr/bin/env bash
# Starts Lapline and ends it when it cannot start, each time with a sentence that says what to do.
# Takes what standalone.sh takes; without -Dlapline.data=... the data lies in lapline-data here.
set -eu
home="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
deployed="$home/standalone/deployments/ROOT.war"
data="$PWD/lapline-data"
offset=0
for given in "$@"; do
  case "$given" in
    -Dlapline.data=*) data="${given#*=}" ;;
    -Djboss.socket.binding.port-offset=*) offset="${given#*=}" ;;
  esac
done

refuse() {
  printf '\n  Lapline has not started: %s\n\n' "$*" >&2
  exit 1
}

mkdir -p "$data" 2>/dev/null && [ -w "$data" ] && { [ ! -e "$data/db" ] || [ -w "$data/db" ]; } ||
  refuse "it cannot write to its data folder $data. Give yourself the right to write there, or choose another with -Dlapline.data=/another/folder"

other="$(cat "$data/running" 2>/dev/null || true)"
if [ -n "$other" ] && ps -p "$other" -o args= 2>/dev/null | grep -q lapline.data=; then
  refuse "another Lapline (process $other) is running on the data folder $data. Stop that one first, or choose another folder with -Dlapline.data=/another/folder"
fi

for port in $((8080 + offset)) $((9990 + offset)); do
  if (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null; then
    refuse "port $port is taken by another program. Stop that one, or let Lapline use ports 100 higher with -Dlapline.port.offset=100 (-Djboss.socket.binding.port-offset=100 where it is started without Maven)"
  fi
done

# this process becomes the server's, so its number is the one to know
echo $$ >"$data/running"
rm -f "$deployed.deployed" "$deployed.failed"
log="$home/standalone/log/server.log"
before="$(wc -l <"$log" 2>/dev/null || echo 0)"
why() {
  tail -n "+$((before + 1))" "$log" | grep -E 'Caused by|ERROR' | grep -v WFLYSRV0026 | tail -1
}
parent=$PPID
(
  # waits for the application, and after that for the end of the build that started it, if one did
  while kill -0 $$ 2>/dev/null; do
    if [ -e "$deployed.failed" ]; then
      printf '\n  Lapline has not started. What stood in its way (all of it is in %s):\n  %s\n\n' "$log" "$(why)" >&2
      kill -TERM $$
      exit 0
    fi
    if [ -n "${LAPLINE_ENDS_WITH_PARENT:-}" ]; then
      kill -0 "$parent" 2>/dev/null || { kill -TERM $$; exit 0; }
    elif [ -e "$deployed.deployed" ]; then
      exit 0
    fi
    sleep 1
  done
) &

# A shop's server is started often and asked little. The light compiler brings the first page a quarter sooner and
# still answers a result page in a tenth of a second. With room for its classes from the start the collector does not
# stop everything four times to make some. JAVA_OPTS in the environment replaces all of it.
export JAVA_OPTS="${JAVA_OPTS:--Xms256m -Xmx1g -XX:MetaspaceSize=192m -XX:+UseSerialGC -XX:TieredStopAtLevel=1 \
  -Djava.net.preferIPv4Stack=true -Djava.awt.headless=true -Djboss.modules.system.pkgs=org.jboss.byteman}"

# in the background so that a signal to this process reaches the server
export LAUNCH_JBOSS_IN_BACKGROUND=true
exec "$home/bin/standalone.sh" "-Dlapline.data=$data" "$@"
