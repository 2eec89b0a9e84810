"""The review page: what waits for a person, and one inquiry with all that led to its draft.

Two pages made on the server (Starlette, Jinja2), usable without JavaScript. ``app.make_app`` puts
them together, ``serve.serve`` runs them.
"""
