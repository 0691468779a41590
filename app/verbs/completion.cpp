// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/completion.h"

#include <algorithm>

#include "app/text/language.h"
#include "app/verbs/verbs.h"

namespace taut::app::verbs {

namespace {

/// The options of a verb whose value is a file, or a folder: "|--logbook|--out|".
std::string taking(const VerbSpec& spec, std::initializer_list<std::string_view> values)
{
    std::string names = "|";
    for (const OptionSpec& option : spec.options)
        for (const std::string_view value : values)
            if (option.value.substr(0, value.size()) == value) names += std::string(option.name) + '|';
    return names;
}

/// Of those that take something which bash cannot know: after them it offers nothing.
std::string takingAnything(const VerbSpec& spec)
{
    std::string names = "|";
    for (const OptionSpec& option : spec.options)
        if (!option.value.empty()) names += std::string(option.name) + '|';
    return names;
}

/// Of those that take one of a few words ("en|es|de"), which words: "|--language en es de|".
std::string takingOneOf(const VerbSpec& spec)
{
    std::string choices = "|";
    for (const OptionSpec& option : spec.options) {
        if (option.value.find('|') == std::string_view::npos) continue;
        std::string words(option.value);
        std::replace(words.begin(), words.end(), '|', ' ');
        choices += std::string(option.name) + ' ' + words + '|';
    }
    return choices;
}

}  // namespace

std::string bashCompletion()
{
    std::string verbs;
    for (const Verb& verb : allVerbs()) verbs += std::string(verb.spec.name) + ' ';
    std::string script = "# SPDX-License-Identifier: GPL-3.0-or-later\n"
                         "# Made by: tautweb --completion\n"
                         "_tautweb()\n{\n"
                         "    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]}\n"
                         "    local options='' files='|' folders='|' values='|' choices='|'\n"
                         "    COMPREPLY=()\n"
                         "    case ${COMP_WORDS[1]} in\n";
    for (const Verb& verb : allVerbs()) {
        std::string options;
        for (const OptionSpec& option : verb.spec.options) options += std::string(option.name) + ' ';
        script += "    " + std::string(verb.spec.name) + ")\n        options='" + options + "--json --help'\n" +
                  "        files='" + taking(verb.spec, {"FILE", "COPY"}) + "'\n        folders='" +
                  taking(verb.spec, {"DIR", "FOLDER"}) + "'\n        values='" + takingAnything(verb.spec) +
                  "'\n        choices='" + takingOneOf(verb.spec) + "' ;;\n";
    }
    std::string spoken;
    for (const Language& one : languages()) spoken += std::string(" ") + one.id;
    script += "    *)\n        options='--demo --logbook --dark --text-size --language --help --version'\n"
              "        files='|--logbook|'\n        values='|--logbook|--text-size|--language|'\n"
              "        choices='|--language" +
              spoken +
              "|' ;;\n    esac\n"
              "    local known=${choices#*\"|$before \"}\n"
              "    if [[ $COMP_CWORD -eq 1 && $word != -* ]]; then\n"
              "        mapfile -t COMPREPLY < <(compgen -W '" +
              verbs +
              "' -- \"$word\")\n"
              "    elif [[ $known != \"$choices\" ]]; then\n"
              "        mapfile -t COMPREPLY < <(compgen -W \"${known%%|*}\" -- \"$word\")\n"
              "    elif [[ $folders == *\"|$before|\"* ]]; then\n"
              "        compopt -o filenames\n        mapfile -t COMPREPLY < <(compgen -d -- \"$word\")\n"
              "    elif [[ $values == *\"|$before|\"* && $files != *\"|$before|\"* ]]; then\n"
              "        return\n"
              "    elif [[ $word == -* ]]; then\n"
              "        mapfile -t COMPREPLY < <(compgen -W \"$options\" -- \"$word\")\n"
              "    else\n"
              "        compopt -o filenames\n        mapfile -t COMPREPLY < <(compgen -f -- \"$word\")\n"
              "    fi\n}\ncomplete -F _tautweb tautweb\n";
    return script;
}

}  // namespace taut::app::verbs
