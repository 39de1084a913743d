"""Ctrl+C pressed twice ends a command with its own words and code, not with those of a crash."""

import os
import signal
import subprocess
import sys
import textwrap

import pytest

from gui.commands.interrupting import interrupting

pytestmark = pytest.mark.skipif(os.name == "nt", reason="signals of POSIX")


def run(code: str) -> "subprocess.CompletedProcess[str]":
    """In a process of its own, where Ctrl+C does what it does at a start."""
    return subprocess.run(
        [sys.executable, "-c", textwrap.dedent(code)], capture_output=True, text=True, timeout=30, check=False
    )


def test_a_second_ctrl_c_ends_at_once_while_a_slow_photo_is_waited_for() -> None:
    ended = run("""
        import dataclasses, os, signal, threading, time
        from concurrent.futures import ThreadPoolExecutor
        import gui.command
        from gui.commands.commandlist import COMMANDS

        def press():
            for _ in range(2):
                time.sleep(0.4)
                os.kill(os.getpid(), signal.SIGINT)

        def work(_asked):
            with ThreadPoolExecutor(1) as pool:
                pool.submit(time.sleep, 20)
                threading.Thread(target=press, daemon=True).start()
                time.sleep(20)

        look = next(one for one in COMMANDS if one.name == "look")
        gui.command.COMMANDS = [dataclasses.replace(look, run=work)]
        raise SystemExit(gui.command.main(["look", "--book", "any"]))
    """)

    assert (ended.returncode, ended.stdout) == (130, "")
    assert ended.stderr == "evenstand: stopped at once; what was stored by then stays.\n"


def test_what_ctrl_c_did_before_it_does_again_afterwards() -> None:
    before = signal.getsignal(signal.SIGINT)
    with interrupting():
        assert signal.getsignal(signal.SIGINT) is not before
    assert signal.getsignal(signal.SIGINT) is before


def test_a_program_that_was_started_deaf_to_ctrl_c_stays_so() -> None:
    before = signal.signal(signal.SIGINT, signal.SIG_IGN)
    try:
        with interrupting():
            assert signal.getsignal(signal.SIGINT) is signal.SIG_IGN
    finally:
        signal.signal(signal.SIGINT, before)
