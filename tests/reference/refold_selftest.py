#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Small records made by hand, whose verdicts were worked out on paper from core/walk/EVENTS.md ("the page").

Each test names the sentence that it holds refold.py to. Nothing here was computed by the program under test: plan rows,
sheets, events, hashes, commitments and signatures are made in this file.

    refold_selftest.py
"""
import hashlib
import json
import re
import sys
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
sys.dont_write_bytecode = True
import compare  # noqa: E402
import p256  # noqa: E402
import record  # noqa: E402
import refold  # noqa: E402

# RFC 6979, A.2.5: the key of the P-256 examples, and its signature over "sample" with SHA-256.
PRIVATE = 0xC9AFA9D845BA75166B5C215767B1D6934E50C3DB36E89B127B8A622B120F6721
PUBLIC = ("60FED4BA255A9D31C961EB74C6356D68C049B8923B61FA6CE669622E60F29FB6"
          "7903FE1008B8BC99A41AE9E95628BC64F2F1B20C2D7E9F5177A3C294D4462299")
R = "EFD48B2AACB6A8FD1140DD9CD45E81D69D2C877B56AAF991C34D0EA84EAF3716"
S = "F7CB1C942D657C41D436C7A1B6E29F65F3E900DBB9AFF4064DC4AB2F843ACDA8"
KEY = "3059301306072a8648ce3d020106082a8648ce3d030107034200" + "04" + PUBLIC.lower()


def name_id(label):
    return hashlib.sha256(label.encode()).hexdigest()[:32]


def canonical(value):
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def der(r, s):
    def integer(number):
        data = number.to_bytes(33, "big").lstrip(b"\0")
        data = b"\0" + data if data[0] & 0x80 else data
        return bytes([2, len(data)]) + data
    body = integer(r) + integer(s)
    return bytes([0x30, len(body)]) + body


def sign(text):
    """ECDSA (FIPS 186-4, 6.4) with a number of its own for each text."""
    digest = int.from_bytes(hashlib.sha256(text).digest(), "big")
    k = int.from_bytes(hashlib.sha256(b"once" + text).digest(), "big") % p256.N
    r = p256.point_times(k, p256.G)[0] % p256.N
    return der(r, pow(k, -1, p256.N) * (digest + r * PRIVATE) % p256.N)


def sealed(value="because", salt="00" * 16):
    commitment = hashlib.sha256(canonical(["proofwalk/private/1", salt, value]).encode()).hexdigest()
    return {"private": commitment}


def number(text):
    digits, _, fraction = text.partition(".")
    return {"m": int(digits + fraction), "e": -len(fraction)}


class Walk:
    """A job under the pen: events are added chain by chain, then folded."""

    def __init__(self, plan, files, tables=None, judgement=1):
        self.job, self.clock, self.chains, self.contents = name_id("job"), 100, {}, {}
        listed = [[path, self.content(text)] for path, text in sorted(files.items())]
        tabled = [[path, self.content(text)] for path, text in sorted((tables or {}).items())]
        self.say("a", "start", {"key": KEY, "program": "by hand", "judgement": judgement, "words": [], "tables": tabled,
                                "plan": self.content(canonical(plan)), "catalogue": listed})

    def content(self, text):
        hash_ = hashlib.sha256(text.encode()).hexdigest()
        self.contents[hash_] = text
        return hash_

    def say(self, chain, kind, body, seen=()):
        """Appends an event and gives [chain, n, hash]. A chain that begins late opens first."""
        if chain != "a" and chain not in self.chains and kind != "open":
            self.say(chain, "open", {"key": KEY, "program": "by hand"}, [self.chains["a"][0][1]])
        events = self.chains.setdefault(chain, [])
        self.clock += 1
        utc = f"2026-11-25T09:{self.clock // 60:02}:{self.clock % 60:02}.000Z"
        text = canonical({
            "alg": "sha256", "v": 1, "job": self.job, "chain": name_id(chain), "n": len(events) + 1,
            "prev": events[-1][1][2] if events else "", "seen": sorted(seen), "stamp": [self.clock, 0],
            "utc": utc, "offset_min": 60, "kind": kind, "body": body})
        events.append((text, [name_id(chain), len(events) + 1, hashlib.sha256(text.encode()).hexdigest()]))
        return events[-1][1]

    def answer(self, chain, step, result, seen=(), state="set", how="singly", **more):
        return self.say(chain, "answer", {"step": step, "result": result, "how": how, "state": state, **more}, seen)

    def withdraw(self, chain, event, seen=()):
        return self.say(chain, "withdraw", {"event": event[2], "reason": sealed()}, seen)

    def repair(self, chain, findings, retest, seen=()):
        return self.say(chain, "repair", {"findings": findings, "touched": ["device"], "retest": retest,
                                          "words": sealed()}, seen)

    def lines(self):
        yield canonical({"format": "proofwalk/record/1", "job": self.job})
        for hash_, text in sorted(self.contents.items()):
            yield canonical({"content": hash_, "text": text})
        yield canonical({"commitment": sealed()["private"], "salt": "00" * 16, "value": "because"})
        for _, events in sorted(self.chains.items(), key=lambda item: name_id(item[0])):
            yield from (text for text, _ in events)
        for _, events in sorted(self.chains.items(), key=lambda item: name_id(item[0])):
            chain, n, hash_ = events[-1][1]
            signed = f"proofwalk/head/1\n{self.job}\n{chain}\n{n}\n{hash_}\n".encode()
            yield canonical({"chain": chain, "n": n, "hash": hash_, "signature": sign(signed).hex()})

    def bytes(self):
        return "".join(line + "\n" for line in self.lines()).encode()

    def fold(self):
        return refold.refold(self.bytes())


# The house: two door contacts of one zone that sounds and reports, one smoke alarm, one siren.

def row(label, **cells):
    return {"id": name_id(label), **cells}


def house(**zone):
    """The rows of a plan; `zone` changes cells of the doors' zone."""
    doors = {"zone": "1", "areas": "house", "purpose": "intrusion", "delay": "none", "live_in": "away",
             "sounding": "loud", "reporting": "yes", "feed": "loop", "rest": "closed", "resistors": "1", **zone}
    fire = {**doors, "zone": "2", "purpose": "fire", "live_in": "always", "feed": "two-wire"}
    return {
        "format": "proofwalk/plan/1",
        "areas": [row("house", area="house", account="1234")],
        "zones": [row("zone 1", **{cell: value for cell, value in doors.items() if value}), row("zone 2", **fire)],
        "devices": [row("front", tag="front", kind="contact", zone="1"),
                    row("back", tag="back", kind="contact", zone="1"),
                    row("smoke-1", tag="smoke-1", kind="smoke", zone="2"),
                    row("smoke-2", tag="smoke-2", kind="smoke", zone="2"), row("siren", tag="siren", kind="sounder")],
        "signals": [row("front tamper", tag="front", signal="tamper", zone="1")],
        "paths": [row("line", path="line", medium="ip", to="station")],
    }


def step(name, kind, **keys):
    """A step as TOML."""
    keys = {"step": name, "kind": kind, "states": ["set", "walk-test"], "act": "Do it.", "seconds": 10,
            "source": {"basis": "common practice"}, **keys}
    limits = keys.pop("limits", [])
    lines = [toml(key, value) for key, value in keys.items()]
    for limit in limits:
        lines += ["[[STEP.limits]]"] + [toml(key, value) for key, value in limit.items()]
    return lines


def toml(key, value):
    if isinstance(value, dict):
        return f"{key.replace('_', '-')} = {{ {', '.join(toml(*item) for item in value.items())} }}"
    return f"{key.replace('_', '-')} = {json.dumps(value)}"


def sheet(title, *steps, **keys):
    lines = ["format = 1", f'title = "{title}"', 'group = "openings"', 'purposes = ["intrusion"]',
             'signals = ["alarm", "tamper"]', "core-seconds = 60", 'summary = "Made by hand."']
    lines += [toml(key, value) for key, value in keys.items()]
    for each in steps:
        lines += ["", "[[before]]"] + [line.replace("STEP", "before") for line in each]
    return "\n".join(lines) + "\n"


LIMIT = {"lower": "3.0", "upper": "5.0", "binding": "performance", "confirmed": True}
SOUND = {"lower": "65", "binding": "life-safety", "confirmed": True}
FILES = {
    "kinds/contact.toml": sheet(
        "Contact", step("opens", "see", proves="input"),
        step("alarms", "see", proves="response", states=["set"]), step("arrives", "confirm", proves="received"),
        step("loop", "read", subject="zone", signal="-", quantity="loop", unit="kOhm", limits=[LIMIT]),
        step("cover", "see", signal="tamper", proves="input"), step("tries", "trial", core=False, tries=10, needed=9)),
    "kinds/smoke.toml": sheet(
        "Smoke", step("trips", "see", proves="input"), step("alarms", "see", proves="response", states=["set"]),
        step("arrives", "confirm", proves="received"),
        step("loudness", "read", quantity="sound", unit="dB[SPL]", limits=[SOUND]), life_safety=True),
    "kinds/sounder.toml": sheet("Sounder", step("sounds", "listen", signal="-", proves="output"), output=True),
}

OPENS, ALARMS, ARRIVES = ([name_id("front"), "alarm", name] for name in ("opens", "alarms", "arrives"))
LOOP = [name_id("zone 1"), "-", "loop"]
COVER = [name_id("front"), "tamper", "cover"]
TRIES = [name_id("front"), "alarm", "tries"]
LOUDNESS = [name_id("smoke-1"), "alarm", "loudness"]
SOUNDS = [name_id("siren"), "-", "sounds"]


def of(tag, name):
    return [name_id(tag), "alarm", name]


class Case(unittest.TestCase):
    def setUp(self):
        self.walk = Walk(house(), FILES)

    def look(self, tag="front"):
        answer = self.walk.fold()
        self.assertEqual(answer["problems"], [])
        return next(device for device in answer["devices"] if device["tag"] == tag)

    def step(self, step, tag="front"):
        return next(each for each in self.look(tag)["steps"] if [each["signal"], each["name"]] == step[1:])

    def prove(self, *names, tag="front", chain="a"):
        for name in names:
            self.walk.answer(chain, of(tag, name), "as-planned")

    def prove_front(self):
        """All core steps of the front door."""
        self.prove("opens", "alarms", "arrives")
        self.walk.answer("a", COVER, "as-planned")
        self.loop("4.00", "0.05")

    def loop(self, value, uncertainty=None, chain="a", seen=(), unit="kOhm", key=LOOP, how="singly"):
        more = {"uncertainty": number(uncertainty)} if uncertainty else {}
        return self.walk.answer(chain, key, "value", seen, reading={**number(value), "unit": unit}, how=how, **more)


class Answers(Case):
    def test_nothing_answered(self):
        # "A step without a standing attempt is to do."
        self.assertEqual(self.step(OPENS)["verdict"], "to-do")
        self.assertEqual(self.look()["verdict"], "to-do")

    def test_everything_proved(self):
        # "pass needs every promised proof": input (both signals), response and received; output is not promised.
        self.prove_front()
        self.assertEqual(self.look()["verdict"], "pass")
        self.assertEqual(self.look()["proofs"],
                         {"input": "lit", "response": "lit", "output": "none", "received": "lit"})

    def test_a_newer_answer_supersedes_what_it_has_seen(self):
        # "Those that another standing attempt has seen are superseded."
        first = self.walk.answer("a", OPENS, "started")
        self.walk.answer("b", OPENS, "as-planned", [first])
        self.assertEqual(self.step(OPENS)["verdict"], "pass")
        self.assertFalse(self.step(OPENS)["disagreement"])

    def test_seen_is_transitive(self):
        # "... names in `seen` a head that is B or has seen B": c sees b's head, which had seen a's answer.
        first = self.walk.answer("a", OPENS, "not-as-planned")
        note = self.walk.say("b", "note", {"words": sealed()}, [first])
        self.walk.answer("c", OPENS, "as-planned", [note])
        self.assertEqual(self.step(OPENS)["verdict"], "pass")

    def test_clocks_do_not_decide(self):
        # Both answers are concurrent, whatever their stamps say: "Of the rest the worst verdict holds; if they differ
        # there is a disagreement."
        self.walk.answer("a", OPENS, "not-as-planned")
        self.walk.answer("b", OPENS, "as-planned")
        self.assertEqual(self.step(OPENS)["verdict"], "fail")
        self.assertTrue(self.step(OPENS)["disagreement"])

    def test_a_disagreement_ends_when_somebody_has_seen_both(self):
        one = self.walk.answer("a", OPENS, "started")
        two = self.walk.answer("b", OPENS, "as-planned")
        self.walk.answer("c", OPENS, "as-planned", [one, two])
        self.assertEqual((self.step(OPENS)["verdict"], self.step(OPENS)["disagreement"]), ("pass", False))

    def test_a_bulk_answer_never_settles_a_disagreement(self):
        # "a bulk or automatic answer never settles one"; a person who answers singly does.
        one = self.walk.answer("a", OPENS, "started")
        two = self.walk.answer("b", OPENS, "as-planned")
        bulk = self.walk.answer("c", OPENS, "as-planned", [one, two], how="bulk")
        self.assertEqual((self.step(OPENS)["verdict"], self.step(OPENS)["disagreement"]), ("running", True))
        self.walk.answer("a", OPENS, "as-planned", [two, bulk])
        self.assertEqual((self.step(OPENS)["verdict"], self.step(OPENS)["disagreement"]), ("pass", False))

    def test_a_bulk_answer_supersedes_where_nothing_disagrees(self):
        self.walk.answer("a", OPENS, "started")
        self.walk.answer("a", OPENS, "as-planned", how="bulk")
        self.assertEqual(self.step(OPENS)["verdict"], "pass")

    def test_readings_that_lie_apart_disagree_though_both_pass(self):
        # |3.6 - 3.9| = 0.3 > 0.1 + 0.1; and 0.2 = 0.1 + 0.1 does not.
        self.loop("3.6", "0.1")
        self.loop("3.9", "0.1", chain="b")
        self.assertEqual((self.step(LOOP)["verdict"], self.step(LOOP)["disagreement"]), ("pass", True))

    def test_readings_as_far_apart_as_their_uncertainties_agree(self):
        self.loop("3.6", "0.1")
        self.loop("3.8", "0.1", chain="b")
        self.assertFalse(self.step(LOOP)["disagreement"])

    def test_a_withdrawal_removes_exactly_one(self):
        # The earlier answer decides again; the withdrawal itself cannot be withdrawn.
        self.walk.answer("a", OPENS, "as-planned")
        second = self.walk.answer("a", OPENS, "not-as-planned")
        gone = self.walk.withdraw("b", second, [second])
        self.walk.withdraw("a", gone, [gone])
        self.assertEqual(self.step(OPENS)["verdict"], "pass")
        self.assertNotIn("finding", self.step(OPENS))

    def test_an_answer_in_a_state_that_is_not_allowed_counts_for_nothing(self):
        self.walk.answer("a", ALARMS, "as-planned", state="walk-test")
        self.assertEqual(self.step(ALARMS)["verdict"], "to-do")

    def test_no_access_takes_only_what_was_not_answered(self):
        # "at each of its own core steps that had no attempt which still stands": not the zone's, not the extended one.
        self.prove("opens")
        self.walk.say("a", "no-access", {"subject": name_id("front"), "reason": sealed()})
        found = {each["name"]: each["verdict"] for each in self.look()["steps"]}
        self.assertEqual(found, {"opens": "pass", "alarms": "no-access", "arrives": "no-access", "loop": "to-do",
                                 "cover": "no-access", "tries": "to-do"})
        self.assertEqual(self.look()["verdict"], "no-access")

    def test_no_access_yields_to_whoever_reached_it(self):
        # The other phone answered at the same time; its answer withdrawn, the no-access stands again.
        self.walk.say("a", "no-access", {"subject": name_id("front"), "reason": sealed()})
        reached = self.walk.answer("b", OPENS, "as-planned")
        self.assertEqual((self.step(OPENS)["verdict"], self.step(OPENS)["disagreement"]), ("pass", False))
        self.walk.withdraw("b", reached)
        self.assertEqual(self.step(OPENS)["verdict"], "no-access")

    def test_a_bulk_answer_is_judged_by_what_it_saw(self):
        # It saw two that differ, so it superseded neither, though one of them was superseded elsewhere since.
        one = self.walk.answer("a", OPENS, "started")
        two = self.walk.answer("b", OPENS, "not-as-planned")
        self.walk.answer("c", OPENS, "as-planned", [one, two], how="ear")
        self.walk.answer("a", OPENS, "as-planned")
        self.assertEqual((self.step(OPENS)["verdict"], self.step(OPENS)["disagreement"]), ("fail", True))

    def test_trials(self):
        # "at least as many tries as wanted and no more misses than tries - needed of the sheet allows"
        for hits, tries, verdict in ((9, 10, "pass"), (8, 10, "fail"), (9, 9, "fail"), (9, 11, "fail"), (10, 11, "pass")):
            with self.subTest(hits=hits, tries=tries):
                self.walk = Walk(house(), FILES)
                self.walk.answer("a", TRIES, "value", hits=hits, tries=tries)
                self.assertEqual(self.step(TRIES)["verdict"], verdict)
                self.assertEqual(self.step(TRIES)["reading"], f"{hits} of {tries}")

    def test_extended_steps_count_once_answered(self):
        self.prove_front()
        self.assertEqual(self.look()["verdict"], "pass")
        self.walk.answer("a", TRIES, "started")
        self.assertEqual(self.look()["verdict"], "running")


class Readings(Case):
    def test_guard_band(self):
        # Limits 3.0 to 5.0 kOhm: pass if 3.0 + U <= x <= 5.0 - U, fail if x < 3.0 - U or x > 5.0 + U (ILAC-G8, 4.2).
        for value, uncertainty, verdict in (
                ("3.4", "0.5", "too-close"),   # exact.md's own example: 3.5 > 3.4
                ("3.5", "0.5", "pass"), ("4.5", "0.5", "pass"), ("4.6", "0.5", "too-close"),
                ("2.5", "0.5", "too-close"), ("2.4", "0.5", "fail"), ("5.5", "0.5", "too-close"),
                ("5.6", "0.5", "fail"), ("4.0", "1.0", "pass"), ("4.0", "1.1", "too-close"),
                ("3.0", None, "pass"), ("2.99", None, "fail"), ("5.00", None, "pass"), ("5.01", None, "fail")):
            with self.subTest(value=value, uncertainty=uncertainty):
                self.walk = Walk(house(), FILES)
                self.loop(value, uncertainty)
                self.assertEqual(self.step(LOOP)["verdict"], verdict)

    def test_the_reading_is_told_as_typed_and_compared_in_the_base_unit(self):
        self.loop("3350", "10", unit="Ohm")
        self.assertEqual((self.step(LOOP)["verdict"], self.step(LOOP)["reading"]), ("pass", "3350 Ohm"))
        self.loop("3.40", "0.50")
        self.assertEqual((self.step(LOOP)["verdict"], self.step(LOOP)["reading"]), ("too-close", "3.40 kOhm"))

    def test_without_uncertainty_against_life_safety(self):
        # "U is 0 if none was stated, and then a pass against a life-safety or legal limit is too close"; a fail stays.
        for value, uncertainty, verdict in (("80", None, "too-close"), ("80", "2", "pass"), ("60", None, "fail")):
            with self.subTest(value=value, uncertainty=uncertainty):
                self.walk = Walk(house(), FILES)
                self.loop(value, uncertainty, unit="dB[SPL]", key=LOUDNESS)
                self.assertEqual(self.step(LOUDNESS, "smoke-1")["verdict"], verdict)

    def test_an_unconfirmed_limit_fails_nothing(self):
        text = FILES["kinds/contact.toml"].replace("confirmed = true", "confirmed = false")
        self.walk = Walk(house(), {**FILES, "kinds/contact.toml": text})
        self.loop("9.9", "0.1")
        self.assertEqual(self.step(LOOP)["verdict"], "pass")

    def test_the_plans_loop_at_rest(self):
        # 4700 ohm 1 %: 4653 to 4747; 100 m at 84.2151 ohm/km out and back: 16.84302; together 4653.0 to 4763.8 ohm.
        table = ("name,section_mm2,resistance_ohm_per_km,temperature_c,bound,source,basis\n"
                 "AWG 24,0.20473,84.2151,20,nominal,by hand,computed\n")
        text = FILES["kinds/contact.toml"].replace('upper = "5.0"', 'upper = "9.0"').replace(
            'step = "loop"', 'step = "loop"\nplan-limit = "loop-normal"')
        plan = house(eol_ohm="4700", tolerance_pct="1", conductor="AWG 24", cable_m="100")
        for value, verdict in (("4653.0", "pass"), ("4652.9", "fail"), ("4763.8", "pass"), ("4763.9", "fail")):
            with self.subTest(value=value):
                self.walk = Walk(plan, {**FILES, "kinds/contact.toml": text}, {"conductors.csv": table})
                self.loop(value, unit="Ohm")
                self.assertEqual(self.step(LOOP)["verdict"], verdict)


    def test_an_effect_within_its_time(self):
        # effect-within: the least within_s of the effects that name the device.
        text = FILES["kinds/sounder.toml"] + "\n[[after]]\n" + "\n".join(
            step("starts", "time", quantity="start", unit="s", plan_limit="effect-within", signal="-"))
        plan = house()
        plan["effects"] = [row("one", cause="zone:1", effect="siren", within_s="10"),
                           row("two", cause="zone:2", effect="siren", within_s="3"),
                           row("three", cause="zone:2", effect="siren"),
                           row("four", cause="zone:2", effect="front", within_s="1")]
        for value, verdict in (("3.0", "pass"), ("3.1", "fail")):
            with self.subTest(value=value):
                self.walk = Walk(plan, {**FILES, "kinds/sounder.toml": text})
                key = [name_id("siren"), "-", "starts"]
                self.loop(value, unit="s", key=key)
                self.assertEqual(self.step(key, "siren")["verdict"], verdict)


    def test_an_effect_it_causes_within_its_time(self):
        # effect-within of a device that is nobody's effect: of the effects on devices it causes, by tag, zone, purpose.
        text = FILES["kinds/contact.toml"] + "\n[[after]]\n" + "\n".join(
            step("heard", "time", quantity="start", unit="s", plan_limit="effect-within", signal="-"))
        plan = house()
        plan["effects"] = [row("one", cause="zone:1", effect="siren", within_s="10"),
                           row("two", cause="purpose:intrusion", effect="siren", within_s="5"),
                           row("three", cause="front", effect="path:line", within_s="2"),
                           row("four", cause="zone:2", effect="siren", within_s="1")]
        for value, verdict in (("5.0", "pass"), ("5.1", "fail")):
            with self.subTest(value=value):
                self.walk = Walk(plan, {**FILES, "kinds/contact.toml": text})
                key = [name_id("front"), "-", "heard"]
                self.loop(value, unit="s", key=key)
                self.assertEqual(self.step(key)["verdict"], verdict)


class Findings(Case):
    def finding(self, step=OPENS):
        return self.step(step).get("finding")

    def test_open_and_accepted(self):
        # "open while the step's verdict is fail"; "accepted besides if an `accept` that names it has seen F".
        self.walk.answer("a", OPENS, "not-as-planned")
        self.assertEqual((self.finding(), self.step(OPENS)["accepted"]), ("open", False))
        self.walk.say("a", "accept", {"findings": [OPENS], "name": sealed(), "words": sealed()})
        self.assertTrue(self.step(OPENS)["accepted"])
        self.walk.answer("a", OPENS, "not-as-planned")  # a new F: the acceptance has not seen it
        self.assertFalse(self.step(OPENS)["accepted"])

    def test_fail_then_pass_without_a_repair_is_intermittent(self):
        self.walk.answer("a", OPENS, "not-as-planned")
        self.prove_front()
        self.assertEqual((self.step(OPENS)["verdict"], self.finding()), ("pass", "intermittent"))
        self.assertEqual(self.look()["verdict"], "fail")

    def test_repair_then_pass_is_cleared(self):
        self.walk.answer("a", OPENS, "not-as-planned")
        self.walk.repair("a", [OPENS], [OPENS, COVER])
        self.assertEqual((self.step(OPENS)["verdict"], self.finding()), ("retest", "put-right"))
        self.assertEqual(self.look()["verdict"], "retest")
        self.prove_front()
        self.assertEqual((self.step(OPENS)["verdict"], self.finding()), ("pass", "cleared"))
        self.assertEqual(self.look()["verdict"], "pass")

    def test_a_pass_clears_a_retest_only_if_it_has_seen_the_repair(self):
        # The other phone passes it at the same time, without having seen the repair.
        failed = self.walk.answer("a", OPENS, "not-as-planned")
        self.walk.say("b", "note", {"words": sealed()}, [failed])
        repair = self.walk.repair("a", [OPENS], [OPENS])
        self.walk.answer("b", OPENS, "as-planned")
        self.assertEqual((self.step(OPENS)["verdict"], self.finding()), ("retest", "put-right"))
        self.walk.answer("b", OPENS, "as-planned", [repair])
        self.assertEqual((self.step(OPENS)["verdict"], self.finding()), ("pass", "cleared"))

    def test_a_repair_touches_steps_that_had_passed(self):
        self.prove_front()
        self.walk.repair("a", [], [COVER])
        self.assertEqual(self.step(COVER)["verdict"], "retest")
        self.assertEqual(self.step(OPENS)["verdict"], "pass")  # not listed, not touched
        self.assertEqual(self.look()["proofs"]["input"], "under-way")

    def test_a_withdrawn_repair_leaves_the_finding_open(self):
        self.walk.answer("a", OPENS, "not-as-planned")
        repair = self.walk.repair("a", [OPENS], [OPENS])
        self.walk.withdraw("a", repair)
        self.assertEqual((self.step(OPENS)["verdict"], self.finding()), ("fail", "open"))

    def test_a_repair_that_has_not_seen_the_failure_does_not_put_it_right(self):
        # Made on another phone at the same time: the step is to retest, its finding "else open".
        self.walk.answer("a", OPENS, "not-as-planned")
        self.walk.repair("b", [OPENS], [OPENS])
        self.assertEqual((self.step(OPENS)["verdict"], self.finding()), ("retest", "open"))
        self.assertEqual(self.look()["verdict"], "fail")

    def test_too_close_after_a_failure_stays_open(self):
        # "else open"
        self.loop("9.9", "0.1")
        self.loop("3.4", "0.5")
        self.assertEqual((self.step(LOOP)["verdict"], self.finding(LOOP)), ("too-close", "open"))

    def test_not_applicable_after_a_failure(self):
        # "cleared if the step passes or is n/a and a deciding attempt has seen a repair which names it"; else open.
        self.walk.answer("a", COVER, "not-as-planned")
        self.walk.answer("a", COVER, "not-applicable")
        self.assertEqual(self.finding(COVER), "open")
        self.walk.repair("a", [COVER], [COVER])
        self.walk.answer("a", COVER, "not-applicable")
        self.assertEqual(self.finding(COVER), "cleared")

    def test_a_recommendation_is_noted_and_holds_nothing_back(self):
        self.prove_front()
        self.walk.say("a", "finding", {"step": OPENS, "grade": "recommendation", "words": sealed()})
        self.assertEqual((self.finding(), self.look()["verdict"]), ("noted", "pass"))

    def test_failure_withdrawn_leaves_no_finding(self):
        # "intermittent means fail, then pass, with no withdrawal of the fail".
        failed = self.walk.answer("a", OPENS, "not-as-planned")
        self.walk.withdraw("a", failed)
        self.prove_front()
        self.assertEqual((self.finding(), self.look()["verdict"]), (None, "pass"))

    def test_a_zones_finding_is_every_devices(self):
        self.prove_front()
        self.loop("9.9", "0.1")
        self.assertEqual((self.look("front")["verdict"], self.look("back")["verdict"]), ("fail", "fail"))


class Proofs(Case):
    def test_not_applicable_alone_proves_nothing(self):
        # "the core steps that serve it, n/a left out, must be there": a promised proof of n/a only is not proved.
        self.prove_front()
        self.walk.answer("a", ARRIVES, "not-applicable", reason=sealed())
        self.assertEqual(self.step(ARRIVES)["verdict"], "n/a")
        self.assertEqual((self.look()["proofs"]["received"], self.look()["verdict"]), ("promised", "to-do"))

    def test_input_must_hold_for_every_signal(self):
        self.prove("opens")
        self.assertEqual(self.look()["proofs"]["input"], "under-way")
        self.walk.answer("a", COVER, "not-as-planned")
        self.assertEqual(self.look()["proofs"]["input"], "failed")

    def test_response_stood_for_by_its_like(self):
        # The back door's own input is passed; the front's response passed; both agree in all that counts.
        self.prove_front()
        self.assertEqual(self.look("back")["proofs"]["response"], "promised")  # its input is not proved yet
        self.prove("opens", tag="back")
        self.assertEqual(self.look("back")["proofs"]["response"], "lit")
        self.assertEqual(self.look("back")["verdict"], "to-do")  # received is never stood for
        self.prove("arrives", tag="back")
        self.assertEqual(self.look("back")["verdict"], "pass")

    def test_a_withdrawn_trip_stands_for_nothing(self):
        self.prove("opens", tag="back")
        self.prove("opens")
        trip = self.walk.answer("a", ALARMS, "as-planned")
        self.assertEqual(self.look("back")["proofs"]["response"], "lit")
        self.walk.withdraw("a", trip)
        self.assertEqual(self.look("back")["proofs"]["response"], "promised")

    def test_a_trip_to_retest_stands_for_nothing(self):
        self.prove("opens", tag="back")
        self.prove("alarms")
        self.walk.repair("a", [], [ALARMS])
        self.assertEqual(self.look("back")["proofs"]["response"], "promised")

    def test_response_is_never_stood_for_where_life_is_at_stake(self):
        self.prove("trips", tag="smoke-2")
        self.prove("trips", "alarms", "arrives", tag="smoke-1")
        self.assertEqual(self.look("smoke-2")["proofs"]["response"], "promised")

    def test_only_its_like_stands_for_it(self):
        # "whose areas, purpose, delay, live_in and sounding agree": one column apart, and it stands for nothing.
        for column, cell in (("areas", "yard"), ("purpose", "technical"), ("delay", "entry"), ("live_in", "night"),
                             ("sounding", "inside"), ("feed", "radio")):
            with self.subTest(column=column):
                plan = house()
                plan["areas"].append(row("yard", area="yard", account="1234"))
                other = {**plan["zones"][0], "zone": "3", "id": name_id("zone 3"), column: cell}
                plan["zones"].append(other)
                plan["devices"][1]["zone"] = "3"
                self.walk = Walk(plan, FILES)
                self.prove("opens", "alarms")
                self.prove("opens", tag="back")
                state = "lit" if column == "feed" else "promised"
                self.assertEqual(self.look("back")["proofs"]["response"], state)

    def test_a_signal_without_a_zone_promises_no_input(self):
        plan = house()
        del plan["signals"][0]["zone"]
        self.walk = Walk(plan, FILES)
        self.assertNotIn("cover", [each["name"] for each in self.look()["steps"]])
        self.prove("opens")
        self.assertEqual(self.look()["proofs"]["input"], "lit")

    def test_a_device_without_a_zone_has_no_step_of_a_zone(self):
        plan = house()
        del plan["devices"][0]["zone"]
        self.walk = Walk(plan, FILES)
        self.assertEqual([each["name"] for each in self.look()["steps"]], ["cover", "tries"])

    def test_who_sounds_and_who_is_told(self):
        # response: loud or inside, or a cause by tag or zone; received: the zone reports and a path leads to somebody.
        for zone, effects, path, promised in (
                ({"sounding": "inside"}, [], "owner", ("promised", "promised")),
                ({"sounding": "notify"}, [], "nobody", ("none", "none")),
                ({"sounding": "silent"}, ["front"], "station", ("promised", "promised")),
                ({"sounding": "silent"}, ["zone:1"], "station", ("promised", "promised")),
                ({"sounding": "silent"}, ["zone:2", "back", "purpose:fire"], "station", ("none", "promised"))):
            with self.subTest(zone=zone, effects=effects):
                plan = house(**zone)
                plan["paths"][0]["to"] = path
                plan["effects"] = [row(cause, cause=cause, effect="siren") for cause in effects]
                self.walk = Walk(plan, FILES)
                proofs = self.look()["proofs"]
                self.assertEqual((proofs["response"], proofs["received"]), promised)

    def test_an_output_promises_output_alone(self):
        self.assertEqual(self.look("siren")["proofs"],
                         {"input": "none", "response": "none", "output": "promised", "received": "none"})
        self.walk.answer("a", SOUNDS, "as-planned")
        self.assertEqual((self.look("siren")["proofs"]["output"], self.look("siren")["verdict"]), ("lit", "pass"))

    def test_a_silent_zone_that_does_not_report_promises_input_alone(self):
        self.walk = Walk(house(sounding="silent", reporting="no"), FILES)
        self.assertEqual(self.look()["proofs"],
                         {"input": "promised", "response": "none", "output": "none", "received": "none"})
        self.assertNotIn("alarms", [each["name"] for each in self.look()["steps"]])

    def test_a_path_must_carry_the_areas_account(self):
        for account, state in (("1234", "promised"), ("9999", "none"), ("9999;1234", "promised")):
            with self.subTest(account=account):
                plan = house()
                plan["paths"][0]["account"] = account
                self.walk = Walk(plan, FILES)
                self.assertEqual(self.look()["proofs"]["received"], state)

    def test_an_effect_promises_response_and_output(self):
        plan = house(sounding="silent", reporting="no")
        plan["effects"] = [row("e", cause="purpose:intrusion", in_mode="always", effect="back", within_s="2")]
        self.walk = Walk(plan, FILES)
        self.assertEqual(self.look("front")["proofs"]["response"], "promised")
        self.assertEqual(self.look("back")["proofs"]["output"], "promised")

    def test_a_kind_without_a_sheet_is_to_do(self):
        plan = house()
        plan["devices"].append(row("thing", tag="thing", kind="unknown"))
        self.walk = Walk(plan, FILES)
        self.assertEqual(self.look("thing")["verdict"], "to-do")


class Sheets(Case):
    """core/catalogue/FORMAT.md: how a sheet is put together."""

    def names(self, **files):
        self.walk = Walk(house(), {**FILES, **files})
        return [each["name"] for each in self.look()["steps"]]

    def part(self, *steps, head="format = 1"):
        return "\n".join([head] + [line for each in steps for line in ["", "[[steps]]", *each]]) + "\n"

    def test_parts_come_between_before_and_after(self):
        after = FILES["kinds/contact.toml"] + "\n[[after]]\n" + "\n".join(step("closed-up", "inspect"))
        names = self.names(**{"kinds/contact.toml": after,
                              "parts/resistors-1.toml": self.part(step("fourth", "see")),
                              "parts/feed-loop.toml": self.part(step("third", "see")),
                              "parts/delay-none.toml": self.part(step("second", "see")),
                              "parts/purpose-intrusion.toml": self.part(step("first", "see")),
                              "parts/purpose-fire.toml": self.part(step("other", "see"))})
        self.assertEqual(names, ["opens", "alarms", "arrives", "loop", "cover", "tries",
                                 "first", "second", "third", "fourth", "closed-up"])

    def test_a_part_replaces_in_place_or_is_left_out(self):
        part = self.part(step("opens", "see", proves="input", core=False, replaces=True),
                         step("nowhere", "see", replaces=True))
        names = self.names(**{"parts/feed-loop.toml": part})
        self.assertEqual(names, ["opens", "alarms", "arrives", "loop", "cover", "tries"])
        self.assertEqual(self.look()["proofs"]["input"], "promised")  # no core step serves it any longer
        self.walk.answer("a", OPENS, "as-planned")
        self.walk.answer("a", COVER, "as-planned")
        self.assertNotEqual(self.look()["proofs"]["input"], "lit")

    def test_what_anybody_forbids_is_left_out_wherever_it_stands(self):
        part = 'format = 1\nforbid = ["arrives", "tries"]\n'
        self.assertEqual(self.names(**{"parts/feed-loop.toml": part}), ["opens", "alarms", "loop", "cover"])
        self.assertEqual(self.names(**{"parts/feed-radio.toml": part})[2], "arrives")

    def test_one_name_twice_is_an_error(self):
        with self.assertRaises(refold.Unreadable):
            self.names(**{"parts/feed-loop.toml": self.part(step("opens", "see"))})

    def test_when_all_columns_must_hold(self):
        def when(**columns):
            return self.part(step("extra", "see", when={key: value for key, value in columns.items()}))
        for columns, there in (({"feed": ["radio", "loop"]}, True), ({"feed": ["radio"]}, False),
                               ({"feed": ["loop"], "purpose": ["fire"]}, False), ({"reporting": ["yes"]}, True),
                               ({"resistors": ["1"]}, True), ({"signals": ["tamper", "fault"]}, True),
                               ({"signals": ["fault"]}, False), ({"kind": ["contact"]}, True)):
            with self.subTest(columns=columns):
                self.assertEqual("extra" in self.names(**{"parts/feed-loop.toml": when(**columns)}), there)

    def test_figures_of_a_rule_set_narrow_a_limit(self):
        # 3.0 to 5.0 of the sheet, at most 4.0 of the rules, at most 3.5 unconfirmed: 3.0 to 4.0 is judged by.
        def figure(upper, confirmed, **more):
            return ["", "[[figures]]"] + [toml(key, value) for key, value in {
                "quantity": "loop", "unit": "kOhm", "upper": upper, "binding": "legal", "confirmed": confirmed,
                **more}.items()]
        rules = "\n".join(['format = 1', 'title = "By hand"'] + figure("4.0", True) + figure("3.5", False)
                          + figure("3.2", True, when={"purpose": ["fire"]}))
        plan = house()
        plan["site"] = [row("rules", field="rules", value="eu")]
        for value, uncertainty, verdict in (("3.9", "0.1", "pass"), ("4.1", "0.05", "fail"),
                                            ("3.9", None, "too-close")):
            with self.subTest(value=value):
                self.walk = Walk(plan, {**FILES, "rules/eu.toml": rules})
                self.loop(value, uncertainty)
                self.assertEqual(self.step(LOOP)["verdict"], verdict)

    def test_limits_that_exclude_each_other(self):
        text = FILES["kinds/contact.toml"].replace('lower = "3.0"', 'lower = "6.0"')
        with self.assertRaises(refold.Unreadable):
            Walk(house(), {**FILES, "kinds/contact.toml": text}).fold()

    def test_a_timer_of_a_sequence(self):
        # timer: planned minus and plus tolerance, 28 to 32 s.
        plan = house()
        plan["timers"] = [row("entry", timer="entry-delay", area="house", planned_s="30", tolerance_s="2"),
                          row("exit", timer="exit-delay", area="house", planned_s="60")]
        text = self.part(step("entry-timed", "time", signal="-", subject="timer", quantity="entry-delay", unit="s",
                              plan_limit="timer"), head='format = 1\ntitle = "Entry"\nsummary = "By hand."')
        for value, verdict in (("32.0", "pass"), ("32.1", "fail"), ("27.9", "fail")):
            with self.subTest(value=value):
                self.walk = Walk(plan, {**FILES, "sequences/entry.toml": text})
                self.loop(value, unit="s", key=[name_id("entry"), "-", "entry-timed"])
                found = self.walk.fold()["sequences"]
                self.assertEqual([(each["subject"], each["verdict"]) for each in found],
                                 [("entry-delay, house", verdict)])


class Soundness(Case):
    def problems(self, data):
        return refold.refold(data)["problems"]

    def test_signature_of_rfc_6979(self):
        # RFC 6979, A.2.5, P-256 with SHA-256, message "sample".
        good = der(int(R, 16), int(S, 16))
        self.assertTrue(p256.signature_holds(bytes.fromhex(KEY), b"sample", good))
        self.assertFalse(p256.signature_holds(bytes.fromhex(KEY), b"Sample", good))

    def test_a_changed_answer_breaks_the_chain(self):
        self.walk.answer("a", OPENS, "not-as-planned")
        self.walk.answer("a", ALARMS, "as-planned")
        forged = self.walk.bytes().replace(b"not-as-planned", b"as-planned")
        self.assertEqual(len(self.problems(forged)), 1)
        # "sound up to the event before ... one that its follower names otherwise": neither is judged.
        found = {each["name"]: each["verdict"] for each in refold.refold(forged)["devices"][0]["steps"]}
        self.assertEqual((found["opens"], found["alarms"]), ("to-do", "to-do"))

    def test_the_last_event_changed_is_told_by_its_signed_head(self):
        self.walk.answer("a", OPENS, "not-as-planned")
        answer = refold.refold(self.walk.bytes().replace(b"not-as-planned", b"as-planned"))
        self.assertTrue(answer["problems"])
        self.assertEqual(answer["devices"][0]["steps"][0]["verdict"], "to-do")

    def test_the_pages_worked_examples(self):
        # core/journal/FORMAT.md, whose figures its own test has from sha256sum and openssl.
        page = (Path(__file__).parents[2] / "core/journal/FORMAT.md").read_text()
        quoted = re.findall(r"printf '%s' '(.*)' [|] sha256sum\n```\n```output\n(\w{64})", page)
        self.assertEqual(len(quoted), 2)
        for text, digest in quoted:
            self.assertEqual(record.sha256(record.canonical(record.read_json(text.encode()))), digest)
        key, signature = re.findall(r"printf '%s' (\w+) [|] tr", page)
        head = re.search(r"printf '%s\\n' (proofwalk/head/1 .*?) [|]", page)[1].replace(" ", "\n") + "\n"
        self.assertTrue(p256.signature_holds(bytes.fromhex(key), head.encode(), bytes.fromhex(signature)))

    def test_lines_out_of_order(self):
        lines = self.walk.bytes().split(b"\n")
        lines[1], lines[2] = lines[2], lines[1]
        self.assertIn("order", self.problems(b"\n".join(lines))[0])

    def test_who_has_seen_a_fork_is_judged_all_the_same(self):
        # "all other chains are not touched by it": b saw one of the two and answered.
        self.prove("opens")
        seen = self.walk.answer("a", ALARMS, "as-planned")
        self.walk.answer("b", COVER, "as-planned", [seen])
        lines = self.walk.bytes().split(b"\n")
        place = next(i for i, line in enumerate(lines) if b'"alarms"' in line and b'"kind":"answer"' in line)
        twins = [lines[place], lines[place].replace(b"as-planned", b"started")]
        twins.sort(key=lambda line: hashlib.sha256(line).hexdigest())
        answer = refold.refold(b"\n".join(lines[:place] + twins + lines[place + 1:]))
        found = {each["name"]: each["verdict"] for each in answer["devices"][0]["steps"]}
        self.assertEqual((found["opens"], found["cover"], found["alarms"]), ("pass", "pass", "to-do"))

    def test_a_head_signed_by_another_key(self):
        lines = self.walk.bytes().split(b"\n")
        head = json.loads(lines[-2])
        head["signature"] = sign(b"something else").hex()
        self.assertIn("does not verify", self.problems(b"\n".join(lines[:-2] + [canonical(head).encode(), b""]))[0])
        self.assertIn("has 0 signed heads", self.problems(b"\n".join(lines[:-2] + [b""]))[0])

    def test_a_head_that_is_not_there_and_a_stamp_that_went_back(self):
        self.walk.say("a", "note", {"words": sealed()}, [[name_id("z"), 3, "0" * 64]])
        self.assertIn("a head that is not there", self.walk.fold()["problems"][0])
        self.walk = Walk(house(), FILES)
        self.walk.clock = 50
        self.prove("opens")
        self.assertIn("a stamp that went back", self.walk.fold()["problems"][0])

    def test_an_event_of_another_job(self):
        self.walk.job = name_id("another job")
        self.prove("opens")
        self.walk.job = name_id("job")
        self.assertIn("another job", self.walk.fold()["problems"][0])

    def test_two_events_with_one_number(self):
        # "nothing from that number on is judged; its earlier events and all other chains are."
        self.prove("opens")
        self.walk.answer("b", COVER, "as-planned")
        self.walk.answer("a", ALARMS, "as-planned")
        lines = self.walk.bytes().split(b"\n")
        place = next(i for i, line in enumerate(lines) if b'"alarms"' in line and b'"kind":"answer"' in line)
        twins = [lines[place], lines[place].replace(b"as-planned", b"started")]
        twins.sort(key=lambda line: hashlib.sha256(line).hexdigest())
        answer = refold.refold(b"\n".join(lines[:place] + twins + lines[place + 1:]))
        found = {each["name"]: each["verdict"] for each in answer["devices"][0]["steps"]}
        self.assertEqual((found["opens"], found["cover"], found["alarms"]), ("pass", "pass", "to-do"))
        self.assertTrue(answer["problems"])

    def test_a_gap(self):
        self.prove("opens", "alarms", "arrives")
        lines = [line for line in self.walk.bytes().split(b"\n") if b'"alarms"' not in line or b"act =" in line]
        answer = refold.refold(b"\n".join(lines))
        found = {each["name"]: each["verdict"] for each in answer["devices"][0]["steps"]}
        self.assertEqual((found["opens"], found["arrives"]), ("pass", "to-do"))
        self.assertTrue(answer["problems"])

    def test_a_changed_private_value_and_content(self):
        self.assertTrue(self.problems(self.walk.bytes().replace(b'"value":"because"', b'"value":"never"')))
        with self.assertRaises(refold.Unreadable):  # a sheet that is not what was named judges nothing
            refold.refold(self.walk.bytes().replace(b"core-seconds = 60", b"core-seconds = 61"))

    def test_a_kind_that_is_not_known_is_kept_and_not_judged(self):
        self.walk.say("a", "omen", {"words": sealed()})
        answer = self.walk.fold()
        self.assertEqual((len(answer["notJudged"]), answer["problems"]), (1, []))

    def test_a_body_that_is_not_as_tabled_is_not_judged(self):
        self.walk.say("a", "answer", {"step": OPENS, "how": "singly"})
        self.walk.answer("a", LOOP, "value", reading={"m": 4, "e": -10, "unit": "kOhm"})
        answer = self.walk.fold()
        self.assertEqual((len(answer["notJudged"]), self.step(OPENS)["verdict"], self.step(LOOP)["verdict"]),
                         (2, "to-do", "to-do"))

    def test_another_judgement_is_not_judged(self):
        with self.assertRaises(refold.Unreadable):
            Walk(house(), FILES, judgement=2).fold()

    def test_strict_json(self):
        for line in (b'{"a":1.0}', b'{"a":null}', b'{"a":1,"a":1}', b'{"b":1,"a":1}', b'{"a": 1}',
                     b'{"a":9007199254740992}', b'{"a":-0}', b'{"a":1e3}', b'{"a":[null]}'):
            with self.subTest(line=line), self.assertRaises(ValueError):
                record.read_json(line)


class Comparing(Case):
    """compare.py must tell a difference where there is one, or its silence says nothing."""

    COLUMNS = ("row", "tag", "signal", "step", "verdict", "input", "response", "output", "received", "reading",
               "uncertainty", "unit", "lower", "upper", "at")
    PAGE = "  front   Door contact   shop   1   fail   3.40 ± 0.50 kΩ\n back  x  to do\n"

    def rows(self, **change):
        """What a right results.csv would say of the front door's loop, and of it alone."""
        right = dict.fromkeys(self.COLUMNS, "") | {
            "row": "step", "tag": "zone 1", "signal": "-", "step": "loop", "verdict": "too-close", "reading": "3.40",
            "uncertainty": "0.50", "unit": "kOhm", "lower": "3000", "upper": "5.0E+3", "at": "2026-11-25T09:01:42.000Z"}
        return [right | change]

    def told(self, rows):
        folded = self.walk.fold()
        folded["sequences"] = [step for step in folded["devices"][0]["steps"] if step["name"] == "loop"]
        return list(compare.table_differences({**folded, "devices": [], "findings": []}, rows))

    def test_the_table(self):
        self.loop("3.40", "0.50")
        self.assertEqual(self.told(self.rows()), [])
        for change in ({"verdict": "pass"}, {"reading": "3.4"}, {"upper": "5001"}, {"unit": "Ohm"}, {"tag": "zone 2"},
                       {"uncertainty": ""}, {"at": "2026-11-25T09:01:43.000Z"}, {"row": "device"}):
            with self.subTest(change=change):
                self.assertTrue(self.told(self.rows(**change)))
        self.assertTrue(self.told([]))
        self.assertTrue(self.told(self.rows() * 2))

    def test_the_pages(self):
        step = {"name": "loop", "reading": "3.40 kOhm"}
        front = {"tag": "front", "verdict": "fail", "steps": [step]}
        back = {"tag": "back", "verdict": "to-do", "steps": []}
        self.assertEqual(list(compare.page_differences({"devices": [front, back]}, self.PAGE)), [])
        for wrong in ({**front, "verdict": "pass"}, {**front, "tag": "fron"}, {**back, "verdict": "fail"},
                      {**front, "steps": [{**step, "reading": "3.4 kOhm"}]},
                      {**front, "steps": [{**step, "reading": "13.40 kOhm"}]},
                      {**front, "steps": [{**step, "reading": "3.40 Ohm"}]}):
            with self.subTest(wrong=wrong):
                self.assertEqual(len(list(compare.page_differences({"devices": [wrong]}, self.PAGE))), 1)


if __name__ == "__main__":
    unittest.main()
