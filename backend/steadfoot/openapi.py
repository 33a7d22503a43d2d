"""Prints the OpenAPI document: ``python -m steadfoot.openapi``. The frontend's types are made from it."""

import json
import sys

from steadfoot.app import create_app
from steadfoot.core.database import Database


def main() -> None:
    """Write the document to standard output, in an order that does not change by itself."""
    document = create_app(database=Database("sqlite://")).openapi()
    json.dump(document, sys.stdout, indent=1, sort_keys=True)


if __name__ == "__main__":
    main()
