"""What a page of the site may do, written out once to hold pages and headers against."""

from __future__ import annotations

POLICY = {
    "default-src": "'none'",
    "script-src": "'self'",
    "style-src": "'self' 'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='",
    "img-src": "'self' data:",
    "media-src": "'self' blob:",
    "connect-src": "'self'",
    "form-action": "'none'",
    "base-uri": "'none'",
    "require-trusted-types-for": "'script'",
    "trusted-types": "plumline 'allow-duplicates'",
}
"""All that a page may do. The one style by its hash is the empty one (SHA-256 of nothing, FIPS 180-4)."""
