"""Files of networks: drawn as bytes that are right, wrong, or not there."""

import hashlib
import threading

import pytest

from vision.learned import DIGEST, MODEL
from vision.network import ModelDamaged, checked, net_of


def digest_of(data: bytes) -> str:
    return hashlib.sha256(data).hexdigest()


def test_a_file_with_its_digest_is_read(tmp_path):
    (tmp_path / "a.onnx").write_bytes(b"weights")

    assert checked(tmp_path / "a.onnx", digest_of(b"weights")) == b"weights"


def test_a_file_that_was_altered_is_refused_with_what_to_do(tmp_path):
    (tmp_path / "a.onnx").write_bytes(b"weighty")

    with pytest.raises(ModelDamaged, match=r"a\.onnx is damaged or of another version: install the program"):
        checked(tmp_path / "a.onnx", digest_of(b"weights"))


def test_a_file_that_is_not_there_is_refused_with_what_to_do(tmp_path):
    with pytest.raises(ModelDamaged, match=r"b\.onnx is missing or cannot be read: install the program"):
        checked(tmp_path / "b.onnx", digest_of(b"weights"))


def test_each_thread_has_a_net_of_its_own_and_keeps_it():
    nets = []
    other = threading.Thread(target=lambda: nets.append(net_of(MODEL, DIGEST)))

    other.start()
    other.join()

    assert net_of(MODEL, DIGEST) is net_of(MODEL, DIGEST)
    assert net_of(MODEL, DIGEST) is not nets[0]
