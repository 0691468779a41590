#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Brings the lists of texts (tautweb_LANGUAGE.ts) in line with the sources; what was translated stays.

Run it from anywhere: resources/translations/update.py [--check]. Texts of the screens come from lupdate, those of core
from core_sources.py, as context "core". With --check nothing is written; it ends with 1 where a list is out of date.
"""
import os
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as Xml
from xml.sax.saxutils import escape

sys.dont_write_bytecode = True
import core_sources  # noqa: E402

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
LANGUAGES = ('de', 'es')
# Classes without Q_OBJECT say their texts in the context of another class.
CONTEXTS = {'taut::app::Acts': 'RunActs', 'taut::app::ConfirmArea': 'taut::app::AnswerArea',
            'taut::app::ScanArea': 'taut::app::AnswerArea', 'taut::app::HoldArea': 'taut::app::AnswerArea'}


def lupdate():
    for at in ('/usr/lib/qt6/bin/lupdate', 'lupdate-qt6', 'lupdate6', 'lupdate'):
        try:
            subprocess.run([at, '-version'], check=True, capture_output=True)
            return at
        except (OSError, subprocess.CalledProcessError):
            continue
    sys.exit('lupdate is missing: install the package qt6-l10n-tools')


def read(path):
    """{(context, source, comment): (forms, finished)}: one form, or a singular and a plural of what is counted (%n)."""
    found = {}
    if not os.path.exists(path):
        return found
    for context in Xml.parse(path).getroot().findall('context'):
        name = context.findtext('name')
        for message in context.findall('message'):
            translation = message.find('translation')
            key = (name, message.findtext('source'), message.findtext('comment') or '')
            counted = message.get('numerus') == 'yes'
            forms = [f.text or '' for f in translation.findall('numerusform')] if counted else [translation.text or '']
            found[key] = ((forms + ['', ''])[:2] if counted else forms, translation.get('type') != 'unfinished')
    return found


def sources():
    with tempfile.TemporaryDirectory() as folder:
        ts = os.path.join(folder, 'app.ts')
        done = subprocess.run([lupdate(), '-I', '.', 'app', '-no-obsolete', '-locations', 'none', '-source-language',
                               'en', '-ts', ts], cwd=ROOT, check=True, capture_output=True, text=True)
        for line in (done.stdout + done.stderr).splitlines():
            if 'lacks Q_OBJECT' in line and not any("'" + name + "'" in line for name in CONTEXTS):
                sys.exit(line + '\nGive it Q_OBJECT, or Q_DECLARE_TR_FUNCTIONS with its whole name.')
        all_texts = {(CONTEXTS.get(c, c), s, k): len(forms) for (c, s, k), (forms, _) in read(ts).items()}
    all_texts.update({('core', text, ''): 1 for text in core_sources.all_sources(ROOT)})
    return all_texts


def written(language, texts, known):
    out = ['<?xml version="1.0" encoding="utf-8"?>', '<!DOCTYPE TS>',
           '<TS version="2.1" language="%s" sourcelanguage="en">' % language]
    last = None
    for (context, source, comment), count in sorted(texts.items()):
        if context != last:
            if last is not None:
                out.append('</context>')
            out += ['<context>', '    <name>%s</name>' % escape(context)]
            last = context
        forms, finished = known.get((context, source, comment), ([], False))
        if len(forms) != count:
            forms, finished = [''] * count, False
        out += ['    <message numerus="yes">' if count > 1 else '    <message>', '        <source>%s</source>' % escape(source)]
        if comment:
            out.append('        <comment>%s</comment>' % escape(comment))
        said = escape(forms[0]) if count == 1 else ''.join('<numerusform>%s</numerusform>' % escape(f) for f in forms)
        out += ['        <translation%s>%s</translation>' % ('' if finished else ' type="unfinished"', said),
                '    </message>']
    out += ['</context>', '</TS>', '']
    return '\n'.join(out)


def main():
    check = '--check' in sys.argv[1:]
    texts = sources()
    stale = False
    for language in LANGUAGES:
        path = os.path.join(HERE, 'tautweb_%s.ts' % language)
        text = written(language, texts, read(path))
        before = open(path, encoding='utf-8').read() if os.path.exists(path) else ''
        if text == before:
            continue
        stale = True
        if not check:
            with open(path, 'w', encoding='utf-8') as file:
                file.write(text)
    if check and stale:
        sys.exit('The lists of texts are out of date: run resources/translations/update.py')


if __name__ == '__main__':
    main()
