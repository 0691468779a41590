#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""The English sources of core: every literal that core (or a screen, in a Text) says to people, for context "core".

A literal of C++ does not say whether it is a sentence or a key, so it is told by its looks and by where it stands:
what has a space, a capital or a %1 is a sentence, unless it is SQL, a formula or a piece of one; a single word is one
only where it stands at once in a Text, or in a list below. Better a few too many than one missing: the test of the
translations looks at what is said while whole runs are walked.
"""
import glob
import os
import re
import sys

TOKEN = re.compile(
    r'//[^\n]*|/\*.*?\*/|R"(\w*)\((.*?)\)\1"|"((?:[^"\\\n]|\\.)*)"(?:sv|s)?(?![\w])|\'(?:[^\'\\\n]|\\.)+\''
    r'|(?<=\n)[ \t]*#[^\n]*', re.S)
ESCAPE = re.compile(r'\\(u[0-9A-Fa-f]{4}|x[0-9A-Fa-f]{2}|.)', re.S)
PLAIN = {'n': '\n', 't': '\t', '"': '"', '\\': '\\', "'": "'", '0': '\0'}

# Files that say nothing to people, or only to those who write programs.
SILENT = ('core/logbook/schema.cpp', 'core/logbook/index.cpp', 'core/units/unit.cpp')
# Tables whose first column is a key.
KEYED = ('core/inputs/key_meaning.cpp',)
# A literal behind one of these is a text, though it is one word.
TEXT_BEFORE = re.compile(
    r'(?:\bText\(|\bText\{|\bTold\{|\bcell\(|\bsaid\(|columns = \{+|\{"[^"]*", Align|\bcalled\([^"]*|'
    r'TagIdentifier\{k[AD]i, "\w+", |return Text\(|\b(?:argument|given)\("[^"]*",|\bcalled\([^;]*,)\s*$')
# A literal before one of these is a text.
TEXT_BEHIND = re.compile(r'\s*,\s*Align::')
SQL = re.compile(
    r'^\s*(SELECT|INSERT|UPDATE|DELETE|PRAGMA|CREATE|WHERE|ORDER|BEGIN|COMMIT|ROLLBACK|ATTACH|DETACH|DROP|ALTER|VACUUM'
    r'|SAVEPOINT|RELEASE|ON |AND |FROM |JOIN |END;|,)|= \?|>= \?|< \?| NULL\b|\bquote\(|\|\|'
    r'|\b[a-z]+_rows\b|\bword_search\b|\bCAST\(|\b[mr]\.[a-z_]+\b')
# What stands between SELECT and FROM in a table of questions.
COLUMNS = re.compile(r'[a-z_]+(, [a-z_]+)+')
FUNCTIONS = {'sin', 'cos', 'tan', 'sqrt', 'cosh', 'sinh', 'exp', 'log', 'theta', 'alpha', 'beta', 'eta', 'tau', 'phi',
             'rho', 'sigma', 'omega', 'lambda', 'delta', 'gamma', 'kappa', 'psi', 'lbf', 'bar', 'kgf', 'max', 'min',
             'arcsin', 'arccos', 'asin', 'acos', 'atan', 'ln', 'hat', 'bcm', 'gsm', 'rpm', 'mil'}


def literal(text):
    """The text that a literal stands for."""
    def one(match):
        code = match.group(1)
        if code[0] in 'ux' and len(code) > 1:
            return chr(int(code[1:], 16))
        return PLAIN.get(code, code)
    return ESCAPE.sub(one, text)


def literals(source):
    """[text, what stands before it, what stands behind it, place] of every literal, neighbours joined."""
    out = []
    end = None
    for match in TOKEN.finditer(source):
        token = match.group(0)
        if token.startswith(('//', '/*', "'")) or token.lstrip().startswith('#'):
            continue
        raw = match.group(2) is not None
        text = match.group(2) if raw else literal(match.group(3))
        if end is not None and re.fullmatch(r'(\s|//[^\n]*)*', source[end:match.start()]):
            out[-1][0] += text
            out[-1][2] = source[match.end():match.end() + 40]
        else:
            out.append([text, source[max(0, match.start() - 60):match.start()], source[match.end():match.end() + 40],
                        match.start()])
        end = match.end()
    return out


def words_of(text):
    return [w for w in re.findall(r"[A-Za-z][a-z']{2,}", re.sub(r'%\d+', ' ', text)) if w not in FUNCTIONS]


def is_formula(text):
    """Signs of reckoning, and no words between them that would have to be said in another language."""
    return bool(re.search(r'[=<>|^]| [*/+] ', text)) and not words_of(re.sub(r'\b[a-z]+(\.[a-z_]+)+|\w*:\S+', ' ', text))


def is_sentence(text, path):
    if not words_of(text) and not re.search(r'%\d.*%\d', text) or SQL.search(text) or is_formula(text):
        return False
    if path.startswith('core/logbook') and COLUMNS.fullmatch(text):
        return False
    if text != text.strip() or '\n' in text or not text:
        return False
    if path.startswith('core/physics/catalogue') and re.search(r'[<>]=? ', text) and not text.startswith('y'):
        return False  # what a formula holds for: only the command line shows it
    return ' ' in text or bool(re.match(r"[A-Z][a-z']+", text)) and not re.match(r'[A-Z]\w*[A-Z0-9]', text)


SPOKEN = re.compile(r'\b(?:refuse\(|Finding\{|Text\(|Text\{|refuseField\()')


def spoken_spans(source):
    """The stretches of a screen's source in which a literal is said by core's words: refuse(...), Text(...) ..."""
    spans = []
    for match in SPOKEN.finditer(source):
        depth, at = 1, match.end()
        while at < len(source) and depth > 0:
            token = TOKEN.match(source, at)
            if token and token.end() > at:
                at = token.end()
                continue
            depth += {'(': 1, '{': 1, ')': -1, '}': -1}.get(source[at], 0)
            at += 1
        spans.append((match.start(), at))
    return spans


def sources(root, folders, allowed, denied, only_text=False):
    found = {}
    for folder in folders:
        for pattern in ('*.h', '*.cpp'):
            for path in sorted(glob.glob(os.path.join(root, folder, '**', pattern), recursive=True)):
                name = os.path.relpath(path, root)
                if name in SILENT:
                    continue
                with open(path, encoding='utf-8') as file:
                    source = '\n' + file.read()
                spans = spoken_spans(source) if only_text else []
                for text, before, behind, place in literals(source):
                    if only_text and not any(begin <= place < end for begin, end in spans):
                        continue
                    if only_text and re.search(r'\btr\(\s*$|translate\("\w+",\s*$', before):
                        continue
                    if name in KEYED and re.search(r'\{\s*$', before):
                        continue
                    stands = TEXT_BEFORE.search(before) or TEXT_BEHIND.match(behind)
                    if text in denied or not words_of(text) and not '%' in text:
                        continue
                    single = re.fullmatch(r"[A-Za-z'-]+", text) and (stands or text in allowed)
                    if single or is_sentence(text, name):
                        found.setdefault(text, name)
    return found


def lists(path):
    """The words that are texts, and the sentences that are none, of the file beside this one."""
    allowed, denied = set(), set()
    with open(path, encoding='utf-8') as file:
        for line in file:
            line = line.rstrip('\n')
            if line.startswith('+ '):
                allowed.add(line[2:])
            elif line.startswith('- '):
                denied.add(line[2:])
    return allowed, denied


def all_sources(root):
    allowed, denied = lists(os.path.join(os.path.dirname(os.path.abspath(__file__)), 'core_words.txt'))
    found = sources(root, ['core'], allowed, denied)
    app = ['app/' + room for room in ('text', 'seams', 'drawing', 'widgets', 'models', 'sessions', 'print', 'pages',
                                      'shell')]
    found.update({t: p for t, p in sources(root, app, set(), denied, only_text=True).items() if t not in found})
    for word in allowed:
        found.setdefault(word, '')
    return found


if __name__ == '__main__':
    for text, path in all_sources(sys.argv[1] if len(sys.argv) > 1 else '.').items():
        print(path + '\t' + text)
