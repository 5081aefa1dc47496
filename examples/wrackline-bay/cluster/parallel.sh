#!/usr/bin/env bash
# The same without a queue, with GNU parallel on one to four machines: the same tasks, the same folder, the same bytes.
#
#   parallel.sh ORDER DIR TASKS [WORDS...]          JOBS=2 processes at once; SSHLOGINS=node1,node2 spreads them over machines that see ORDER and DIR
set -uo pipefail
order=$(realpath "$1")
folder=$(realpath -m "$2")
tasks=$3
shift 3
dewstone=${DEWSTONE:-dewstone}

[ -e "$folder/$(basename "$order" .order.yaml)/plan.json" ] || "$dewstone" order plan "$order" -o "$folder" --quiet || exit
seq 0 $((tasks - 1)) | parallel --quote --jobs "${JOBS:-100%}" ${SSHLOGINS:+--sshlogin "$SSHLOGINS"} \
  "$dewstone" order compile "$order" -o "$folder" --task {} --of "$tasks" --continue --quiet "$@"
exec "$dewstone" order gather "$order" -o "$folder" --quiet
