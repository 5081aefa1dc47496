#!/usr/bin/env bash
# An order on a batch queue (Slurm): a job array compiles it in chunks, and a last job gathers whatever the array left.
#
#   submit.sh ORDER DIR TASKS [WORDS...]            ARRAY=2,7-9 submit.sh ORDER DIR TASKS    runs these tasks again
#
# ORDER and DIR must be seen under the same paths by every node. TASKS: 4 to 10 times the processors, so that each has 1 to 10 minutes of work;
# `dewstone order plan` advises a number. WORDS go to `dewstone order compile`, such as --cells 8. DEWSTONE names the program when it is not on the path.
#
# A task that ends with 75 (disk full, store out of reach) may go well another time: have RequeueExit=75 in slurm.conf. A task that is killed, or whose node is
# lost, may run twice at once; both write the same bytes, each file whole or not at all. The queue's own view of an array is no guide to what is done, so the
# last job starts after the array has ended in any way (afterany), and judges completeness from the files.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
order=$(realpath "$1")
folder=$(realpath -m "$2")
tasks=$3
shift 3
export DEWSTONE=${DEWSTONE:-dewstone}

name=$(basename "$order" .order.yaml)
mkdir -p "$folder/$name.log"
# One plan for all tasks; they would each make the same.
[ -e "$folder/$name/plan.json" ] || "$DEWSTONE" order plan "$order" -o "$folder" --quiet

array=$(sbatch --parsable --array="${ARRAY:-0-$((tasks - 1))}" --output="$folder/$name.log/task-%a.txt" "$here/compile.sbatch" "$order" "$folder" "$tasks" "$@")
gather=$(sbatch --parsable --dependency="afterany:$array" --output="$folder/$name.log/gather.txt" "$here/gather.sbatch" "$order" "$folder")
echo "array $array of $tasks tasks, then $gather gathers; the order is complete when $folder/$name/manifest.json stands"
echo "what is missing meanwhile: $DEWSTONE order status $order -o $folder"
