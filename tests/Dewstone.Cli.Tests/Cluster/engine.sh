#!/usr/bin/env bash
# A batch engine (Slurm) on one host, for the tests: a controller and some nodes on the loopback address, without systemd. Needs root.
#
#   engine.sh BASE start NODES CPUS     a private engine below BASE; CPUS slots a node, whatever the machine has
#   engine.sh BASE lose NODE            the node is gone at once, with all that runs on it: n1, n2, ...
#   engine.sh BASE stop                 ends what was started and waits for it
#
# Ports are counted from ENGINE_PORT. Commands of the engine find it by SLURM_CONF=BASE/slurm.conf.
set -euo pipefail
base=$1
export SLURM_CONF=$base/slurm.conf
port=${ENGINE_PORT:-26817}

running() { [ -s "$base/$1.pid" ] && [ "$(cat "/proc/$(cat "$base/$1.pid")/comm" 2>/dev/null)" = "${1%%-*}" ]; }

gone() { for _ in $(seq 100); do [ -d "/proc/$1" ] || return 0; grep -q '^State:.Z' "/proc/$1/status" 2>/dev/null && return 0; sleep 0.1; done; return 1; }

finish() {
  running "$1" || return 0
  local pid
  pid=$(cat "$base/$1.pid")
  kill "$pid"
  gone "$pid" || kill -KILL "$pid"
}

configure() {
  local host
  host=$(hostname -s)
  mkdir -p "$base/state" "$base/spool"
  chmod 755 "$base"
  (umask 077; head -c 1024 /dev/urandom >"$base/munge.key")
  {
    cat <<CONF
ClusterName=test
SlurmctldHost=$host(127.0.0.1)
SlurmctldPort=$port
SlurmUser=root
SlurmdUser=root
AuthType=auth/munge
AuthInfo=socket=$base/munge.socket,cred_expire=5
CommunicationParameters=NoInAddrAny,NoCtldInAddrAny
StateSaveLocation=$base/state
SlurmdSpoolDir=$base/spool/%n
SlurmctldPidFile=$base/slurmctld.pid
SlurmdPidFile=$base/slurmd-%n.pid
SlurmctldLogFile=$base/slurmctld.log
SlurmdLogFile=$base/slurmd-%n.log
SlurmdParameters=config_overrides
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
MpiDefault=none
SelectType=select/cons_tres
SelectTypeParameters=CR_Core_Memory
SchedulerParameters=batch_sched_delay=0,sched_interval=2,bf_interval=5,sched_min_interval=0
RequeueExit=75
JobRequeue=1
ReturnToService=2
SlurmdTimeout=10
KillWait=2
MinJobAge=300
DefMemPerCPU=700
CONF
    for node in $(seq "$1"); do
      echo "NodeName=n$node NodeHostname=$host NodeAddr=127.0.0.1 Port=$((port + node)) CPUs=$2 RealMemory=$((2000 * $2))"
    done
    echo "PartitionName=all Nodes=n[1-$1] Default=YES MaxTime=INFINITE"
  } >"$base/slurm.conf"
}

lose() {
  local processes=() steps=() pid
  kill -KILL "$(cat "$base/slurmd-$1.pid")"
  # What runs on the node tells so in its environment; above it stands the step's own daemon, which must go first lest it report.
  for environment in /proc/[0-9]*/environ; do
    if grep -zqx "SLURMD_NODENAME=$1" "$environment" 2>/dev/null && grep -zqx "SLURM_CONF=$SLURM_CONF" "$environment" 2>/dev/null; then
      pid=${environment#/proc/}
      processes+=("${pid%/environ}")
    fi
  done
  for pid in "${processes[@]}"; do
    local above
    above=$(awk '{print $4}' "/proc/$pid/stat" 2>/dev/null || true)
    [ -n "$above" ] && grep -q '^slurmstepd' "/proc/$above/comm" 2>/dev/null && steps+=("$above")
  done
  for pid in "${steps[@]}" "${processes[@]}"; do kill -KILL "$pid" 2>/dev/null || true; done
}

case $2 in
  start)
    configure "$3" "$4"
    munged --socket="$base/munge.socket" --key-file="$base/munge.key" --pid-file="$base/munged.pid" --log-file="$base/munged.log" --seed-file="$base/munge.seed" --num-threads=2
    slurmctld >>"$base/start.log" 2>&1
    for node in $(seq "$3"); do slurmd -N "n$node" >>"$base/start.log" 2>&1; done
    for _ in $(seq 150); do
      [ "$(sinfo -h -N -o %T 2>/dev/null | grep -c '^idle$')" = "$3" ] && exit 0
      sleep 0.1
    done
    sinfo -N -l >&2
    exit 1
    ;;
  lose) lose "$3" ;;
  stop)
    for file in "$base"/slurmd-*.pid; do [ -e "$file" ] && finish "$(basename "$file" .pid)"; done
    finish slurmctld
    finish munged
    ;;
  *) sed -n 2,8p "$0" >&2; exit 2 ;;
esac
