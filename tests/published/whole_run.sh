#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Gives a sealed run whole with nothing of ours, sqlite3 and jq: every target set and plan with its words, every step
# with what was answered.   whole_run.sh LOGBOOK RUN | jq '.target_sets[0].targets[] | {name, text, window, advice}'
set -euo pipefail
sqlite3 "$1" "select document from sealed_runs where run_id = '$2'" | jq -c --slurpfile words <(
    sqlite3 "$1" "select json_group_object(sha256, json(text)) from definitions where what like '%_words'") '
def with($d): . as $a
  | reduce ($d | to_entries[] | select(.key | IN("without", "was", "since") | not)) as {key: $k, value: $v} ($a;
      if ($a[$k] | type) == "object" and ($v | type) == "object" then .[$k] = ($a[$k] | with($v))
      elif ($a[$k] | type) == "array" and ($v | type) == "array" and
           ($k | IN("targets", "schedules", "findings", "because", "rows", "stages", "places", "steps")) then
        if $v != [] and all($v[]; type == "number" or . == null) then
          .[$k] = [range($v | length) as $i | $a[$k][$i] + {value: $v[$i]}]
        else
          .[$k] = [$v[] | if type == "string" then (split("..") | map(tonumber)) as $r | $a[$k][$r[0]:$r[-1] + 1][]
                          elif type == "object" and has("was") then . as $i | $a[$k][$i.was] | with($i)
                          else . end]
        end
      else .[$k] = $v end)
  | delpaths([$d.without[]? | [.]]);
def whole: reduce .[] as $s ([]; . + [($s.since | type) as $t
  | if $t == "object" then $words[0][$s.since.sha256] | with($s) elif $t == "number" then .[$s.since] | with($s)
    else $s end]);
.events as $events
| .target_sets |= whole | .plans |= whole
| .steps |= map(. as $step | if has("event") then
    ($events[.event - 1] | with_entries(select(.key | IN("entered", "value", "unit", "low", "high", "uncertainty",
     "verdict", "doubtful", "reason", "by", "at")))) + ($step | del(.event)) else . end)'
