"""Course of a run of learning: it ends when its time is up, or after so many steps and then to the bit.

In    the words of a command line
Out   `Course`: which share of the run is done
Not   what is learned (`learn_frame.py`, `learn_edges.py`, `learn_tissue.py`)

Time makes the most of a lent GPU, but no two runs take as many steps in it. A run that counts its steps adds
up in one order too: the same seed, inputs, kind of GPU and release of torch give the same weights.
"""

import argparse
import os
import time
from dataclasses import dataclass, field

import torch


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """Until `steps` are taken or, where they are None, until `seconds` are over."""

    seconds: float
    steps: int | None
    began: float = field(default_factory=time.monotonic)

    @property
    def lasted(self) -> float:
        """Seconds since it began."""
        return time.monotonic() - self.began

    def done(self, step: int) -> float:
        """Share of the run that is done before this step, from 0; from 1 on it is at its end."""
        return step / self.steps if self.steps else self.lasted / self.seconds


def add_course(words: argparse.ArgumentParser, seconds: float) -> None:
    """The two ways to say how long; so many seconds where neither is said."""
    either = words.add_mutually_exclusive_group()
    either.add_argument("--seconds", type=float, default=seconds)
    either.add_argument("--steps", type=int, help="in place of seconds: slower, and the same to the bit")


def begun(asked: argparse.Namespace) -> Course:
    """The course that was asked for; to be called before anything is computed."""
    if asked.steps:
        os.environ["CUBLAS_WORKSPACE_CONFIG"] = ":4096:8"  # else products of matrices add in any order
        torch.use_deterministic_algorithms(True)
    torch.backends.cudnn.benchmark = not asked.steps
    return Course(seconds=asked.seconds, steps=asked.steps)
