"""Attached files to words: workbooks and PDF, read in a process that may fail alone."""
