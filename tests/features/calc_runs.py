"""Running ``steadfoot calc`` as a script would."""

import json

from typer.testing import CliRunner

from steadfoot.cli import app

COMMON = {"value", "unit", "rule", "source"}


def calc(*arguments):
    return CliRunner().invoke(app, ["calc", *arguments])


def answer(*arguments):
    ran = calc(*arguments, "--json")
    assert ran.exit_code == 0, ran.output
    assert ran.stderr == ""
    return json.loads(ran.stdout)


def refusal(*arguments):
    """Both ways of asking: a sentence on standard error and code 2; with --json the problem as well."""
    plain, as_json = calc(*arguments), calc(*arguments, "--json")
    assert (plain.exit_code, as_json.exit_code, plain.stdout) == (2, 2, "")
    problem = json.loads(as_json.stdout)
    assert {"type", "title", "status", "code", "detail"} <= set(problem)
    assert (problem["type"], problem["status"]) == (f"/problems/{problem['code']}", 422)
    assert plain.stderr.strip()
    assert as_json.stderr == plain.stderr
    return problem, plain.stderr
