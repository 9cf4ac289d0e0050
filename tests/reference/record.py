# SPDX-License-Identifier: GPL-3.0-or-later
"""The lines of a record.jsonl and whether they are sound, by core/journal/FORMAT.md alone: hashes, commitments, chains,
signed heads, and what each event has seen. What the events mean is refold.py's matter.
"""
import hashlib
import json
import re
from collections import defaultdict

from p256 import signature_holds

INT_LIMIT = 2**53 - 1


class Unreadable(Exception):
    """The record cannot be judged at all."""


# --- JSON ------------------------------------------------------------------------------------------------------------

def canonical(value):
    """RFC 8785 for what the record may hold: integers, strings, booleans, arrays, objects with ASCII keys."""
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False).encode("utf-8")


def read_json(line):
    """Strictly: no float, no null, no key twice, no integer beyond +-(2^53-1), only the canonical form."""
    def refuse(text):
        raise ValueError(f"a number the record may not hold: {text}")

    def integer(text):
        number = int(text)
        return number if abs(number) <= INT_LIMIT else refuse(text)

    def members(pairs):
        if len({key for key, _ in pairs}) != len(pairs):
            raise ValueError("a key twice")
        if any(not key.isascii() for key, _ in pairs):
            raise ValueError("a key that is not ASCII")
        return dict(pairs)

    def no_null(value):
        if value is None:
            raise ValueError("a null")
        for part in value if isinstance(value, list) else value.values() if isinstance(value, dict) else ():
            no_null(part)

    value = json.loads(line.decode("utf-8"), parse_float=refuse, parse_int=integer, parse_constant=refuse,
                       object_pairs_hook=members)
    no_null(value)
    if canonical(value) != line:
        raise ValueError("not in canonical form")
    return value


def sha256(data):
    return hashlib.sha256(data).hexdigest()


# --- The record ------------------------------------------------------------------------------------------------------

# The members of an event and what each may be; ids are 32, hashes 64 lower-case hexadecimal digits.
def is_hex(digits):
    return lambda value: isinstance(value, str) and re.fullmatch(f"[0-9a-f]{{{digits}}}", value) is not None


def is_integer(least, most=INT_LIMIT):
    return lambda value: type(value) is int and least <= value <= most


def is_text(pattern):
    return lambda value: isinstance(value, str) and re.fullmatch(pattern, value) is not None


def is_list(*parts):
    return lambda value: isinstance(value, list) and len(value) == len(parts) and all(
        good(part) for good, part in zip(parts, value))


ID, HASH, COUNT = is_hex(32), is_hex(64), is_integer(1)
MEMBERS = {
    "alg": is_text("sha256"), "v": COUNT, "job": ID, "chain": ID, "n": COUNT, "prev": is_hex("0,64"),
    "seen": lambda value: isinstance(value, list) and all(map(is_list(ID, COUNT, HASH), value)),
    "stamp": is_list(is_integer(0), is_integer(0)), "utc": is_text(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z"),
    "offset_min": is_integer(-1439, 1439), "kind": is_text("[a-z][a-z0-9-]{0,39}"),
    "body": lambda value: isinstance(value, dict)}


class Event:
    def __init__(self, text, members):
        for name in MEMBERS.keys() | members.keys():
            if name not in members or name not in MEMBERS or not MEMBERS[name](members[name]):
                raise ValueError(f"no event of this form: member {name}")
        self.__dict__.update(members)
        self.stamp, self.hash = tuple(self.stamp), sha256(text)
        if len(self.prev) != (0 if self.n == 1 else 64):
            raise ValueError("n and prev do not agree")
        if [head[0] for head in self.seen] != sorted({head[0] for head in self.seen} - {self.chain}):
            raise ValueError("seen is not in rising order of other chains")
        self.clock = {}  # chain -> the highest number this event has seen there

    def has_seen(self, other):
        return self.clock.get(other.chain, 0) >= other.n


class Record:
    """The lines of record.jsonl, every hash checked. `problems` holds all that is wrong, in the order found."""

    def __init__(self, data):
        self.problems, self.contents, self.events, self.heads = [], {}, [], []
        first, *lines = data.split(b"\n")
        start = read_json(first)
        if start.get("format") != "proofwalk/record/1" or set(start) != {"format", "job"}:
            raise Unreadable(f"an unknown format: {start.get('format')}")
        self.job = start["job"]
        if not lines or lines.pop() != b"":
            self.problems.append("the last line is not ended")
        before = ()
        for number, line in enumerate(lines, 2):
            try:
                place = self.take(line, read_json(line))
                if place <= before:
                    raise ValueError("not in the order of the page")
                before = place
            except (ValueError, KeyError, TypeError, AttributeError) as error:
                self.problems.append(f"line {number}: {error}")
        self.by_hash = {event.hash: event for event in self.events}
        self.find_what_was_seen()
        self.check_chains()

    def take(self, line, members):
        """One line after the first; gives its place in the order of the page."""
        if "content" in members:
            data = members["text"].encode() if "text" in members else bytes.fromhex(members["hex"])
            if sha256(data) != members["content"]:
                raise ValueError(f"content does not match its hash {members['content']}")
            self.contents[members["content"]] = data
            return 1, members["content"]
        if "commitment" in members:
            # A commitment is SHA-256 over the RFC 8785 array ["proofwalk/private/1", salt, value].
            sealed = sha256(canonical(["proofwalk/private/1", members["salt"], members["value"]]))
            if sealed != members["commitment"]:
                raise ValueError(f"private value does not match its commitment {members['commitment']}")
            return 2, members["commitment"]
        if "alg" in members:
            event = Event(line, members)
            self.events.append(event)
            return 3, event.chain, event.n, event.hash
        if set(members) != {"chain", "hash", "n", "signature"}:
            raise ValueError(f"no line of this format: {sorted(members)}")
        self.heads.append(members)
        return 4, members["chain"]

    def check_chains(self):
        """journal/FORMAT.md, "Checking a record". Leaves the events of the sound parts in `order`."""
        chains = defaultdict(list)
        for event in self.events:
            chains[event.chain].append(event)
        starts = [event for event in self.events if event.n == 1 and event.kind == "start"]
        if len(starts) != 1:
            self.problems.append(f"{len(starts)} chains begin with start")
        sound = set()
        for chain, events in sorted(chains.items()):
            events.sort(key=lambda event: event.n)
            heads = [head for head in self.heads if head["chain"] == chain]
            before = None
            for place, event in enumerate(events):
                wrong = self.wrong_with(event, before, events[place + 1:place + 2], heads)
                if wrong:
                    self.problems.append(f"event {event.n} of chain {chain} {wrong}")
                    break  # nothing from here on is judged; the chain's earlier events and all other chains are
                sound.add(event.hash)
                before = event
            self.check_head(chain, events, heads)
        self.problems += [f"a signed head of chain {head['chain']}, which is not there" for head in self.heads
                          if head["chain"] not in chains]
        self.order = [event for event in self.order if event.hash in sound]

    def wrong_with(self, event, before, after, heads):
        """2., and what the follower or the signed head names otherwise."""
        seen = [self.by_hash.get(head[2]) for head in event.seen]
        if event.job != self.job:
            return "is of another job"
        if after and after[0].n == event.n:
            return "stands there twice"
        if event.n != (before.n + 1 if before else 1):
            return "comes after a gap"
        if event.prev != (before.hash if before else ""):
            return "does not name the one before"
        if any(not head or [head.chain, head.n] != named[:2] for head, named in zip(seen, event.seen)):
            return "has seen a head that is not there"
        if any(event.stamp <= earlier.stamp for earlier in seen + ([before] if before else [])):
            return "has a stamp that went back"
        if event.n == 1 and (event.kind not in ("start", "open") or not isinstance(event.body.get("key"), str)):
            return "begins a chain without a key"
        if after and after[0].n == event.n + 1 and after[0].prev != event.hash:
            return "is not what its follower names"
        if any(head["n"] == event.n and head["hash"] != event.hash for head in heads):
            return "is not what the signed head names"
        return None

    def check_head(self, chain, events, heads):
        """4. One signed head, which names the chain's last event; signed with the chain's key."""
        if len(heads) != 1:
            self.problems.append(f"chain {chain} has {len(heads)} signed heads")
        for head in heads:
            if (head["n"], head["hash"]) != (events[-1].n, events[-1].hash):
                self.problems.append(f"the signed head of chain {chain} is not its last event")
            text = "".join(f"{part}\n" for part in ("proofwalk/head/1", self.job, chain, head["n"], head["hash"]))
            try:
                key, signature = bytes.fromhex(events[0].body["key"]), bytes.fromhex(head["signature"])
            except (ValueError, KeyError, TypeError):
                key, signature = b"", b""
            if not signature_holds(key, text.encode(), signature):
                self.problems.append(f"the signature of chain {chain} does not verify")

    def find_what_was_seen(self):
        """EVENTS, "Seen": of one chain and a lower number; or through a head that this event, or an earlier one of its
        chain, names. The clock of an event is what the named ones are or have seen, joined."""
        done, waiting = set(), list(self.events)
        self.order = []  # every event after all it has seen
        while waiting:
            later = []
            for event in waiting:
                named = [self.by_hash.get(head[2]) for head in event.seen] + [self.by_hash.get(event.prev)]
                named = [other for other in named if other]
                if any(other.hash not in done for other in named):
                    later.append(event)
                    continue
                for other in named:
                    for chain, n in {**other.clock, other.chain: other.n}.items():
                        event.clock[chain] = max(event.clock.get(chain, 0), n)
                done.add(event.hash)
                self.order.append(event)
            if len(later) == len(waiting):
                raise Unreadable("events that have seen each other")
            waiting = later
