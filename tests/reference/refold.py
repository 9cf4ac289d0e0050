#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A second reader of the record: what do the events of an attached record.jsonl add up to?

It is written from the pages alone (core/journal/FORMAT.md, core/plan/FORMAT.md, core/catalogue/FORMAT.md,
core/walk/EVENTS.md) and shares no line with the program, so that an error of the one is not an error of the other.
Python 3.11, standard library only. It reads the record and nothing else: no clock, no other file, no page.

    refold.py record.jsonl       prints JSON; exit 0 well, 1 the record is not sound, 2 it cannot be judged

The page's rule stands in the comment before the code that follows it; EVENTS.md is quoted where it says "EVENTS".
"""
import csv
import io
import json
import math
import sys
import tomllib
from collections import defaultdict
from datetime import datetime, timezone
from decimal import Context, Decimal, Inexact, setcontext
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from record import Record, Unreadable, read_json  # noqa: E402

# Exact arithmetic: anything that would have to be rounded raises.
setcontext(Context(prec=80, traps=[Inexact]))

PROOFS = ("input", "response", "output", "received")
# EVENTS, "Verdict of a device": worst first.
ORDER = ("fail", "retest", "too-close", "no-access", "running", "to-do", "pass", "n/a")


def worst(verdicts):
    return min(verdicts, key=ORDER.index)


# --- Quantities ------------------------------------------------------------------------------------------------------

# UCUM code -> (what can be compared with what, scale to the base unit): the closed list of units.
UNITS = {
    "Ohm": ("resistance", "1"), "kOhm": ("resistance", "1e3"), "MOhm": ("resistance", "1e6"), "V": ("voltage", "1"),
    "mV": ("voltage", "1e-3"), "A": ("current", "1"), "mA": ("current", "1e-3"), "A.h": ("charge", "1"),
    "ms": ("time", "1e-3"), "s": ("time", "1"), "min": ("time", "60"), "h": ("time", "3600"),
    "mm": ("length", "1e-3"), "cm": ("length", "1e-2"), "m": ("length", "1"), "Cel": ("temperature", "1"),
    "dB": ("level-ratio", "1"), "dBm": ("radio-level", "1"), "dB[SPL]": ("sound-level", "1"), "%": ("ratio", "1"),
    "[ppm]": ("concentration", "1"), "%{LEL}": ("flammable-ratio", "1"), "1": ("count", "1"),
    "lx": ("illuminance", "1"),
}


def in_base_unit(number, unit):
    return Decimal(number) * Decimal(UNITS[unit][1])


def number_of(member):
    """{"m": mantissa, "e": exponent}, as typed: below 10^15 and from -9 to 9 (core/base/decimal.h)."""
    if abs(member["m"]) >= 10**15 or abs(member["e"]) > 9:
        raise ValueError("a number out of range")
    return Decimal(member["m"]).scaleb(member["e"])


def typed(member):
    """340 and -2 is "3.40"; 34 and 1 is "340"."""
    text = f"{number_of(member):f}"
    return "0" if member["m"] == 0 and member["e"] > 0 else text


class Limit:
    """Limits on one quantity brought together: the intersection, in the base unit."""

    def __init__(self):
        self.lower = self.upper = None
        self.strict = False  # one of them is life-safety or legal

    def narrow(self, lower, upper, strict=False):
        if lower is not None:
            self.lower = lower if self.lower is None else max(self.lower, lower)
        if upper is not None:
            self.upper = upper if self.upper is None else min(self.upper, upper)
        self.strict = self.strict or strict
        if self.lower is not None and self.upper is not None and self.lower > self.upper:
            raise Unreadable(f"limits that exclude each other: {self.lower} to {self.upper}")

    def judge(self, value, uncertainty):
        """EVENTS, "Verdict of an attempt": guard band w = U on both sides (ILAC-G8:09/2019, 4.2). Too close at best
        where no uncertainty was stated against a life-safety or legal limit."""
        u = uncertainty or Decimal(0)
        low = [self.lower] if self.lower is not None else []
        high = [self.upper] if self.upper is not None else []
        if any(value < limit - u for limit in low) or any(value > limit + u for limit in high):
            return "fail"
        inside = all(value >= limit + u for limit in low) and all(value <= limit - u for limit in high)
        if not inside or (self.strict and uncertainty is None):
            return "too-close"
        return "pass"


# --- The plan --------------------------------------------------------------------------------------------------------

def words(cell):
    """Several values in one cell are joined with ";"."""
    return [part for part in (cell or "").split(";") if part]


class Plan:
    def __init__(self, rows):
        if rows.get("format") != "proofwalk/plan/1":
            raise Unreadable(f"an unknown plan: {rows.get('format')}")
        self.rows = rows
        self.zones = {zone["zone"]: zone for zone in rows.get("zones", [])}
        self.accounts = {area["area"]: area.get("account", "") for area in rows.get("areas", [])}
        self.names = {}  # row id -> how people call it
        for kind, column, before in (("devices", "tag", ""), ("zones", "zone", "zone "), ("areas", "area", "area ")):
            for row in rows.get(kind, []):
                self.names[row["id"]] = before + row.get(column, "")
        for row in rows.get("timers", []):
            self.names[row["id"]] = ", ".join(part for part in (row["timer"], row.get("area")) if part)

    def fact(self, kind, field):
        return next((row.get("value", "") for row in self.rows.get(kind, []) if row["field"] == field), "")

    def effects_of(self, tag):
        return [row for row in self.rows.get("effects", []) if row["effect"] == tag]

    def causes(self, tag, zone):
        """The effects whose cause is the device's tag, its zone or its zone's purpose."""
        named = {tag} | ({f"zone:{zone['zone']}", f"purpose:{zone.get('purpose')}"} if zone else set())
        return [row for row in self.rows.get("effects", []) if row["cause"] in named]

    def received(self, zone):
        """A path leads to station or owner and carries the account of one of the zone's areas; a blank list: all."""
        accounts = {self.accounts.get(area, "") for area in words(zone.get("areas"))} - {""}
        return any(path.get("to") in ("station", "owner")
                   and (not words(path.get("account")) or accounts & set(words(path.get("account"))))
                   for path in self.rows.get("paths", []))


def loop_at_rest(zone, conductors):
    """EVENTS, "Limits": the window at rest, in ohm. From eol (1 - tol) to eol (1 + tol) + 2 L r, with r brought to 20 C
    (IEC 60028: 0.00393 per kelvin); each side rounded to 0.1 ohm by floor(10 x + 0.5)/10. In double precision, as the
    rounding is said for a computed figure."""
    resistors = zone.get("resistors")
    wanted = ["conductor", "cable_m"] + (["eol_ohm", "tolerance_pct"] if resistors in ("1", "2") else [])
    if zone.get("feed") not in ("loop", "four-wire") or resistors not in ("0", "1", "2"):
        return None
    if any(not zone.get(cell) for cell in wanted):
        return None
    if resistors == "0" and zone.get("rest") != "closed":
        return None
    row = next((row for row in conductors if row["name"] == zone["conductor"].replace("²", "2")), None)
    if row is None:
        raise Unreadable(f"zone {zone['zone']}: the conductor {zone['conductor']} is not in the table")
    factor = 1 + 0.00393 * (float(row["temperature_c"]) - 20)
    cable = 2 * float(zone["cable_m"]) / 1000 * float(row["resistance_ohm_per_km"]) / factor
    low = high = 0.0
    if resistors != "0":
        eol, part = float(zone["eol_ohm"]), float(zone["tolerance_pct"]) / 100
        low, high = eol * (1 - part), eol * (1 + part)
    return tuple(Decimal(math.floor(10 * side + 0.5)) / 10 for side in (low, high + cable))


# --- The catalogue ---------------------------------------------------------------------------------------------------

class Catalogue:
    """kinds/, parts/, rules/ and sequences/ as they are embedded in the job."""

    def __init__(self, files):
        self.files = {path: tomllib.loads(data.decode("utf-8")) for path, data in files.items()}
        for path, content in self.files.items():
            if content.get("format") != 1:
                raise Unreadable(f"{path}: an unknown format")

    def kind(self, name):
        return self.files.get(f"kinds/{name}.toml")

    def compose(self, traits, rules):
        """catalogue/FORMAT.md, "How a sheet is composed"; the numbers are its."""
        name = f"kinds/{traits['kind']}.toml"
        parts = [f"parts/{column}-{traits[column]}.toml" for column in ("purpose", "delay", "feed", "resistors")]
        # 1. The kind's `before`; purpose, delay, feed, resistors; the kind's `after`. A part that does not exist adds
        #    nothing.
        files = [(name, "before")] + [(path, "steps") for path in parts if path in self.files] + [(name, "after")]
        forbidden = {step for path, _ in files for step in self.files[path].get("forbid", [])}
        steps = {}  # (name, signal) -> step, in the order of their places
        for path, key in files:
            for entry in self.files[path].get(key, []):
                step = step_of(entry)
                place = step["name"], step["signal"]
                # 2. Every step whose signal the device has (`-` always) and whose condition holds.  3. Not forbidden.
                if step["signal"] not in ("-", *traits["signals"]) or not holds(entry, traits) \
                        or step["name"] in forbidden:
                    continue
                # 4. What replaces takes the place of what stands there, or is left out.
                if step["replaces"] and place not in steps:
                    continue
                if place in steps and not step["replaces"]:
                    raise Unreadable(f"{path}: {step['name']} stands there twice")
                steps[place] = step
        for step in steps.values():
            step["limits"] += self.figures(step, traits, rules)
        return list(steps.values())

    def figures(self, step, traits, rules):
        """5. The figures of the rule sets whose quantity is that of the step which reads or times."""
        for name in rules:
            if f"rules/{name}.toml" not in self.files:
                raise Unreadable(f"the rule set {name} is not embedded")
            for figure in self.files[f"rules/{name}.toml"].get("figures", []):
                if step["quantity"] and figure["quantity"] == step["quantity"] and holds(figure, traits):
                    yield limit_of(figure, step)

    def sequence_steps(self, rules):
        """The steps of the sequences, in order of their files; limits as in 5, with no column known."""
        for path, content in sorted(self.files.items()):
            for entry in content.get("steps", []) if path.startswith("sequences/") else []:
                step = {**step_of(entry), "signal": "-"}
                step["limits"] += self.figures(step, {"signals": []}, rules)
                yield step


def holds(entry, traits):
    """`when`: a table of column = allowed words, all of which must hold; for `signals`, any of the device's."""
    return all(set(allowed) & set(traits["signals"] if column == "signals" else [traits.get(column, "")])
               for column, allowed in entry.get("when", {}).items())


def limit_of(entry, step):
    return {"unit": entry.get("unit", step["unit"]), "lower": entry.get("lower"), "upper": entry.get("upper"),
            "binding": entry["binding"], "confirmed": entry["confirmed"]}


def step_of(entry):
    """A step as it stands in a file, with what goes without saying."""
    step = {"name": entry["step"], "kind": entry["kind"], "signal": entry.get("signal", "alarm"),
            "subject": entry.get("subject", "device"), "proves": entry.get("proves", "none"),
            "states": entry["states"], "core": entry.get("core", True), "replaces": entry.get("replaces", False),
            "quantity": entry.get("quantity", ""), "unit": entry.get("unit", ""),
            "plan_limit": entry.get("plan-limit", "none"), "tries": entry.get("tries", 0),
            "needed": entry.get("needed", 0)}
    step["limits"] = [limit_of(limit, step) for limit in entry.get("limits", [])]
    return step


# --- The scope -------------------------------------------------------------------------------------------------------

class Device:
    def __init__(self, row, plan, catalogue):
        self.row, self.id, self.tag = row, row["id"], row.get("tag", "")
        self.zone = plan.zones.get(row.get("zone"))
        kind = catalogue.kind(row.get("kind", ""))
        self.sheet = kind is not None
        others = {extra["signal"]: plan.zones.get(extra.get("zone")) for extra in plan.rows.get("signals", [])
                  if extra["tag"] == self.tag}
        self.signal_zones = {**others, "alarm": self.zone}
        # Promises. Only input is promised by more signals than alarm.
        self.promised = {("input", signal) for signal, zone in self.signal_zones.items() if zone}
        zone = self.zone or {}
        if zone.get("sounding") in ("loud", "inside") or plan.causes(self.tag, self.zone):
            self.promised.add(("response", "alarm"))
        if plan.effects_of(self.tag) or (kind and kind.get("output")):
            self.promised.add(("output", "alarm"))
        if zone.get("reporting") == "yes" and plan.received(zone):
            self.promised.add(("received", "alarm"))
        traits = {column: zone.get(column, "") for column in
                  ("feed", "rest", "resistors", "purpose", "delay", "sounding", "reporting")}
        traits |= {"kind": row.get("kind", ""), "signals": sorted(self.signal_zones)}
        self.steps = []
        for step in catalogue.compose(traits, words(plan.fact("site", "rules"))) if self.sheet else []:
            if self.has(step):
                subject = self.zone["id"] if step["subject"] == "zone" else self.id
                self.steps.append(((subject, "-" if step["subject"] == "zone" else step["signal"], step["name"]), step))

    def has(self, step):
        """A step is left out if its subject is the zone and there is none, or if it proves something that the device
        (for input: that signal) does not promise. Those of other signals are not on the sheet."""
        if step["subject"] == "zone" and not self.zone:
            return False
        return step["proves"] == "none" or (step["proves"], serves(step)) in self.promised or (
            step["proves"] != "input" and any(proof == step["proves"] for proof, _ in self.promised))

    def like(self, other):
        """Agreement in areas, purpose, delay, live_in and sounding."""
        return all(sorted(words((self.zone or {}).get(column))) == sorted(words((other.zone or {}).get(column)))
                   for column in ("areas", "purpose", "delay", "live_in", "sounding"))


def serves(step):
    """A step of signal `-` serves the alarm signal's promise."""
    return "alarm" if step["signal"] == "-" else step["signal"]


class Scope:
    def __init__(self, plan, catalogue, conductors):
        self.plan, self.steps, self.limits = plan, {}, {}
        self.devices = [Device(row, plan, catalogue) for row in plan.rows.get("devices", [])]
        for device in self.devices:
            for key, step in device.steps:
                self.add(key, step, lambda: self.plan_limit(step, device, conductors))
        for step in catalogue.sequence_steps(words(plan.fact("site", "rules"))):
            for kind in ("areas", "timers"):
                for row in plan.rows.get(kind, []):
                    if step["subject"] == kind[:-1] and (kind == "areas" or row["timer"] == step["quantity"]):
                        self.add((row["id"], step["signal"], step["name"]), step, lambda: timer_limit(step, row))

    def add(self, key, step, of_plan):
        """Confirmed limits are intersected; the plan's are always confirmed. Unconfirmed ones decide nothing."""
        if key in self.steps:
            return
        limit = Limit()
        for each in step["limits"]:
            if each["confirmed"]:
                ends = (None if each[end] is None else in_base_unit(each[end], each["unit"])
                        for end in ("lower", "upper"))
                limit.narrow(*ends, each["binding"] in ("life-safety", "legal"))
        limit.narrow(*(of_plan() or (None, None)))
        self.steps[key], self.limits[key] = step, limit

    def plan_limit(self, step, device, conductors):
        if step["plan_limit"] == "loop-normal":
            return loop_at_rest(device.zone or {}, conductors)
        if step["plan_limit"] == "effect-within":
            # The least within_s of the effects that name the device or, if none does, of those on sounders it causes.
            kinds = {row["tag"]: row["kind"] for row in self.plan.rows.get("devices", [])}
            rows = self.plan.effects_of(device.tag) or [row for row in self.plan.causes(device.tag, device.zone)
                                                        if kinds.get(row["effect"], "").startswith("sounder")]
            within = [Decimal(row["within_s"]) for row in rows if row.get("within_s")]
            return (None, min(within)) if within else None
        if step["plan_limit"] == "radio-minimum" and self.plan.fact("panel", "radio_minimum"):
            return in_base_unit(self.plan.fact("panel", "radio_minimum"), step["unit"]), None
        return None


def timer_limit(step, row):
    """Planned minus and plus tolerance."""
    if step["plan_limit"] != "timer" or not row.get("planned_s") or not row.get("tolerance_s"):
        return None
    return tuple(Decimal(row["planned_s"]) + sign * Decimal(row["tolerance_s"]) for sign in (-1, 1))


# --- The fold --------------------------------------------------------------------------------------------------------

KINDS = {"start", "open", "answer", "no-access", "finding", "photograph", "repair", "accept", "withdraw", "kit",
         "clock", "state", "on-test", "off-test", "as-found", "temporary", "put-back", "shown", "note",
         "acceptance", "vouch", "handed-over"}
WORD = {"as-planned": "pass", "not-as-planned": "fail", "not-applicable": "n/a", "no-access": "no-access",
        "started": "running"}


class Attempt:
    def __init__(self, event, verdict, value=None, uncertainty=None, figure="", spread="", unit=""):
        self.event, self.verdict, self.value, self.uncertainty = event, verdict, value, uncertainty
        self.figure, self.spread, self.unit = figure, spread, unit  # as typed
        self.how = event.body.get("how", "singly")
        self.seen = event.has_seen

    def differs(self, other):
        """Verdicts differ, or readings lie further apart than their uncertainties added."""
        if self.verdict != other.verdict:
            return True
        if self.value is None or other.value is None:
            return False
        return abs(self.value - other.value) > (self.uncertainty or 0) + (other.uncertainty or 0)


def attempt_of(event, step, limit):
    """EVENTS, "Verdict of an attempt". None: it counts for nothing."""
    body = event.body
    if body["state"] not in step["states"]:
        return None
    if body["result"] != "value":
        return Attempt(event, WORD[body["result"]])
    if "reading" in body:
        unit = body["reading"]["unit"]
        if UNITS[unit][0] != UNITS[step["unit"]][0]:
            return None
        value = in_base_unit(number_of(body["reading"]), unit)
        stated = in_base_unit(number_of(body["uncertainty"]), unit) if "uncertainty" in body else None
        spread = typed(body["uncertainty"]) if "uncertainty" in body else ""
        return Attempt(event, limit.judge(value, stated), value, stated, typed(body["reading"]), spread, unit)
    misses = body["tries"] - body["hits"]
    good = body["tries"] >= step["tries"] and 0 <= misses <= step["tries"] - step["needed"]
    return Attempt(event, "pass" if good else "fail", figure=f"{body['hits']} of {body['tries']}")


class Fold:
    def __init__(self, record, scope):
        self.scope = scope
        withdrawn = {event.body["event"] for event in record.order if event.kind == "withdraw" and event.v == 1}
        # A withdrawal removes exactly that event, wherever it is merged, and cannot itself be withdrawn.
        events = [event for event in record.order if event.hash not in withdrawn]
        self.not_judged = [event for event in events if event.kind not in KINDS or event.v != 1]
        events = [event for event in events if event.v == 1]
        self.repairs, self.accepts = [], []  # with the steps they name
        self.blankets = []  # (no-access, step)
        self.named = defaultdict(list)  # step -> its `finding` events
        self.attempts = defaultdict(list)
        for event in events:
            try:
                self.take(event)
            except (KeyError, TypeError, ValueError, ArithmeticError):
                self.not_judged.append(event)  # a body that is not as the page tables it
        # A no-access is an attempt at each of the device's own core steps that had no attempt which still stands, on
        # any phone: whoever did reach the device is believed.
        answered = set(self.attempts)
        for event, key in self.blankets:
            if key not in answered:
                self.attempts[key].append(Attempt(event, "no-access"))
        self.decided = {key: self.decide(key) for key in scope.steps}
        self.findings = {key: finding for key in scope.steps if (finding := self.finding(key))}

    def take(self, event):
        if event.kind == "answer":
            key = tuple(event.body["step"])
            step = self.scope.steps.get(key)
            attempt = attempt_of(event, step, self.scope.limits[key]) if step else None
            if attempt:
                self.attempts[key].append(attempt)
        elif event.kind == "no-access":
            for device in self.scope.devices:
                if device.id == event.body["subject"]:
                    self.blankets += [(event, key) for key, step in device.steps
                                      if key[0] == device.id and step["core"]]
        elif event.kind == "finding":
            self.named[tuple(event.body["step"])].append(event)
        elif event.kind == "repair":
            mended, retest = ({tuple(key) for key in event.body[member]} for member in ("findings", "retest"))
            self.repairs.append((event, mended, retest))
        elif event.kind == "accept":
            self.accepts.append((event, {tuple(key) for key in event.body["findings"]}))

    def deciding(self, key):
        """Those that another standing attempt has seen are superseded; but an attempt in bulk or by the ear does not
        supersede attempts that disagree: it stands beside them. Whether they do is a matter of what it has seen alone,
        so that the order in which chains are read changes nothing."""
        gone = {}  # attempt -> what it supersedes
        for attempt in self.attempts[key]:  # in an order in which what was seen comes first
            past = [other for other in gone if attempt.seen(other.event)]
            open_ = [other for other in past if not any(other in gone[each] for each in past)]
            apart = any(one.differs(two) for one in open_ for two in open_)
            gone[attempt] = set() if apart and attempt.how in ("bulk", "ear") else set(past)
        return [attempt for attempt in gone if not any(attempt in others for others in gone.values())]

    def decide(self, key):
        """EVENTS, "Verdict of a step": (verdict, disagreement, the attempt that decides)."""
        deciding = self.deciding(key)
        if not deciding:
            return "to-do", False, None
        latest = max(deciding, key=lambda each: (-ORDER.index(each.verdict), each.event.stamp, each.event.chain))
        apart = any(one.differs(other) for one in deciding for other in deciding)
        # To retest: a standing repair lists it, and none of the deciding attempts has seen that repair.
        for repair, _, retest in self.repairs:
            if key in retest and not any(each.seen(repair) for each in deciding):
                return "retest", apart, latest
        return latest.verdict, apart, latest

    def finding(self, key):
        """EVENTS, "Findings"."""
        failed = [each.event for each in self.attempts[key] if each.verdict == "fail"]
        if not failed and not self.named[key]:
            return None
        last = max(failed or self.named[key], key=lambda event: (event.stamp, event.chain))
        repairs = [repair for repair, mended, _ in self.repairs if key in mended and repair.has_seen(last)]
        verdict = self.decided[key][0]
        if not failed:
            status = "noted"
        elif verdict == "retest" and repairs:
            status = "put-right"
        elif verdict in ("pass", "n/a"):
            cleared = any(each.seen(repair) for each in self.deciding(key) for repair in repairs)
            status = "cleared" if cleared else "intermittent" if verdict == "pass" else "open"
        else:
            status = "open"
        accepted = any(key in named and each.has_seen(last) for each, named in self.accepts)
        return {"status": status, "accepted": accepted}

    # Proofs

    def serving(self, device, proof, signal):
        return [self.decided[key][0] for key, step in device.steps
                if step["core"] and step["proves"] == proof and serves(step) == signal]

    def holds(self, verdicts):
        """The core steps that serve it, n/a left out, must be there and all pass."""
        return set(verdicts) - {"n/a"} == {"pass"}

    def input_holds(self, device):
        signals = [signal for proof, signal in device.promised if proof == "input"]
        return bool(signals) and all(self.holds(self.serving(device, "input", signal)) for signal in signals)

    def stood_for(self, device):
        """Whether another's trip stands for this one's response: never for life and limb."""
        if (device.zone or {}).get("purpose") in ("fire", "gas", "carbon-monoxide", "hold-up", "medical"):
            return False
        return self.input_holds(device) and any(
            other is not device and ("response", "alarm") in other.promised and other.like(device)
            and self.holds(self.serving(other, "response", "alarm")) for other in self.scope.devices)

    def proof(self, device, proof):
        """none, promised, under-way, lit or failed; for several signals it must hold for each."""
        signals = [signal for each, signal in device.promised if each == proof]
        if not signals:
            return "none"
        parts = [self.serving(device, proof, signal) for signal in signals]
        verdicts = [verdict for part in parts for verdict in part]
        if "fail" in verdicts:
            return "failed"
        if all(map(self.holds, parts)) or (proof == "response" and self.stood_for(device)):
            return "lit"
        return "promised" if set(verdicts) <= {"to-do", "n/a"} else "under-way"

    def verdict(self, device):
        """EVENTS, "Verdict of a device"."""
        if not device.sheet:
            return "to-do"
        proofs = {proof: self.proof(device, proof) for proof in PROOFS}
        found = ["to-do"] if any(state not in ("none", "lit") for state in proofs.values()) else []
        for key, step in device.steps:
            verdict = self.decided[key][0]
            stood = verdict == "to-do" and step["proves"] == "response" and proofs["response"] == "lit"
            if (step["core"] and not stood) or (not step["core"] and self.attempts[key]):
                found.append(verdict)
            status = self.findings.get(key, {}).get("status")
            found += {"open": ["fail"], "intermittent": ["fail"], "put-right": ["retest"]}.get(status, [])
        return worst(found or ["to-do"])


# --- The answer ------------------------------------------------------------------------------------------------------

def scope_of(record):
    """What the record is judged by: the contents that the first event of the kind `start` names."""
    starts = [event for event in record.order if event.kind == "start"]
    if len(starts) != 1:
        raise Unreadable(f"{len(starts)} events of the kind start")
    body = starts[0].body
    if body["judgement"] != 1:
        raise Unreadable(f"not judged by this version: judgement {body['judgement']}")

    def content(hash_):
        if hash_ not in record.contents:
            raise Unreadable(f"content {hash_} is not embedded")
        return record.contents[hash_]

    catalogue = Catalogue({path: content(hash_) for path, hash_ in body["catalogue"]})
    tables = {path: content(hash_) for path, hash_ in body.get("tables", [])}
    conductors = list(csv.DictReader(io.StringIO(tables.get("conductors.csv", b"").decode("utf-8"))))
    return Scope(Plan(read_json(content(body["plan"]))), catalogue, conductors)


def observed(event):
    """When it was observed, else when it was written down; RFC 3339 in UTC with milliseconds."""
    time = datetime.fromisoformat(event.body.get("at", {}).get("utc", event.utc)).astimezone(timezone.utc)
    return f"{time:%Y-%m-%dT%H:%M:%S}.{time.microsecond // 1000:03}Z"


def refold(data):
    record = Record(data)
    scope = scope_of(record)
    fold = Fold(record, scope)

    def told(key):
        verdict, apart, latest = fold.decided[key]
        finding, limit = fold.findings.get(key), scope.limits[key]
        return {"subject": scope.plan.names[key[0]], "signal": key[1], "name": key[2], "verdict": verdict,
                "reading": f"{latest.figure} {latest.unit}".strip() if latest else "",
                "uncertainty": latest.spread if latest else "", "disagreement": apart,
                "at": observed(latest.event) if latest else "",
                **{end: f"{side:f}" for end in ("lower", "upper") if (side := getattr(limit, end)) is not None},
                **({"finding": finding["status"], "accepted": finding["accepted"]} if finding else {})}

    devices = [{"tag": device.tag, "id": device.id, "verdict": fold.verdict(device),
                "proofs": {proof: fold.proof(device, proof) for proof in PROOFS},
                "byItsLike": fold.proof(device, "response") == "lit"
                and not fold.holds(fold.serving(device, "response", "alarm")),
                "steps": [told(key) for key, _ in device.steps]} for device in scope.devices]
    owned = {key for device in scope.devices for key, _ in device.steps}
    return {"format": "proofwalk/refold/1", "job": record.job, "problems": record.problems,
            "notJudged": [event.hash for event in fold.not_judged], "devices": devices,
            "sequences": [told(key) for key in scope.steps if key not in owned],
            "findings": [told(key) for key in scope.steps if key in fold.findings]}


def main(arguments):
    if len(arguments) != 1:
        print(__doc__, file=sys.stderr)
        return 2
    try:
        with open(arguments[0], "rb") as file:
            answer = refold(file.read())
    except (OSError, ValueError, KeyError, Unreadable) as error:
        print(f"{arguments[0]}: {type(error).__name__}: {error}", file=sys.stderr)
        return 2
    print(json.dumps(answer, indent=1, ensure_ascii=False))
    return 1 if answer["problems"] else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
