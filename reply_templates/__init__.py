"""The wording of replies: Jinja2 templates and approved answers, for the owner to edit."""
