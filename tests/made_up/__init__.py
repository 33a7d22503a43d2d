"""Made-up requests for every operation of the OpenAPI document: lawful ones, unlawful ones, and lawful ones spoiled."""
